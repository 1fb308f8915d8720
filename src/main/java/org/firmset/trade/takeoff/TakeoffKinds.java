package org.firmset.trade.takeoff;

import java.util.List;
import org.firmset.trade.trace.Kind;

/** The calculators of this room. */
public final class TakeoffKinds {
    public static final List<Kind<?>> ALL = List.of(
            new Kind<>(
                    "block-wall",
                    "Block wall",
                    "Blocks, mortar, labour and mass of a wall.",
                    BlockWall.class,
                    BlockWall::work),
            new Kind<>(
                    "wall-fill",
                    "Wall fill",
                    "Grout, bags, lifts and labour to fill a block wall.",
                    WallFill.class,
                    WallFill::work),
            new Kind<>(
                    "bond-beam", "Bond beam", "Grout, bags and bars of a bond beam.", BondBeam.class, BondBeam::work),
            new Kind<>("slab", "Slab or cap", "Concrete, bags and water of a slab or cap.", Slab.class, Slab::work),
            new Kind<>(
                    "footing", "Strip footing", "Concrete and bags of a strip footing.", Footing.class, Footing::work),
            new Kind<>(
                    "pads",
                    "Pads and piers",
                    "Concrete and bags of pads or piers that are alike.",
                    Pads.class,
                    Pads::work),
            new Kind<>("forms", "Forms", "Form boards and stakes along an edge.", Forms.class, Forms::work),
            new Kind<>(
                    "batches",
                    "Batches of a pour",
                    "How a pour goes batch by batch, and when it is covered.",
                    Batches.class,
                    Batches::work),
            new Kind<>(
                    "bags-or-truck",
                    "Bags or truck",
                    "Bags against ready-mix, and where the truck wins.",
                    BagsOrTruck.class,
                    BagsOrTruck::work),
            new Kind<>(
                    "bar",
                    "Bar rules",
                    "Mass, bends, hooks and laps of one size of bar.",
                    BarRules.class,
                    BarRules::work),
            new Kind<>(
                    "bent-bar", "Bent bars", "Cut length, mass and hours of bent bars.", BentBar.class, BentBar::work),
            new Kind<>("bar-mat", "Mat of bars", "Bars both ways in a slab.", BarMat.class, BarMat::work),
            new Kind<>(
                    "bar-run",
                    "Run or loop of bars",
                    "Lapped bars along a footing or round a loop.",
                    BarRun.class,
                    BarRun::work),
            new Kind<>(
                    "cut-list",
                    "Cut list",
                    "Pieces from stock with the least waste, and whether that is proven.",
                    CutList.class,
                    CutList::work),
            new Kind<>(
                    "base-fill",
                    "Base fill",
                    "Fill, layers and hours of a compacted base.",
                    BaseFill.class,
                    BaseFill::work),
            new Kind<>("dig", "Digging", "Ground dug, loose, put back and hauled off.", Dig.class, Dig::work),
            new Kind<>("lumber", "Lumber", "Boards for a list of pieces.", Lumber.class, Lumber::work),
            new Kind<>("panels", "Sheets and panels", "Sheets for an area.", Panels.class, Panels::work),
            new Kind<>("lengths", "Pipe and trim", "Packs for a total length.", Lengths.class, Lengths::work),
            new Kind<>("fasteners", "Fasteners", "Screws or nails by rule.", Fasteners.class, Fasteners::work),
            new Kind<>(
                    "coating",
                    "Paint and sealer",
                    "Paint, primer or sealer for an area.",
                    Coating.class,
                    Coating::work),
            new Kind<>("counted", "Anything else", "A free line: how many, and why.", Counted.class, Counted::work));

    private TakeoffKinds() {}
}
