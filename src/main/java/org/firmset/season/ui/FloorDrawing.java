package org.firmset.season.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.firmset.season.load.LoadWords;
import org.firmset.season.load.TripLoads;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.Stowed;
import org.firmset.trade.haul.Zone;

/**
 * Draws a bay from above with its front to the left: its zones with their mass, each heap of packs as a box over the length it
 * lies on, and a ring on either side for each tie-down. Where a box lies across the bay says nothing: level across is a
 * caution.
 */
final class FloorDrawing {
    private static final int WIDTH = 720;
    private static final int EDGE = 10;
    private static final int HEAD = 24;
    private static final int RAIL = 14;
    private static final int ROW = 26;
    private static final int BOX = 21;
    private static final double RING = 4;

    private final TripLoads.OwnRun run;
    private final Bay bay;
    private final LoadWords words;
    private final List<Zone> zones;
    private final long before;
    private final double scale;
    private final StringBuilder svg = new StringBuilder();

    /** Packs at their place, in a row of others. */
    private record Heap(TripLoads.Item item, Stowed stowed, int row) {}

    FloorDrawing(TripLoads.OwnRun run, Bay bay, LoadWords words) {
        this.run = run;
        this.bay = bay;
        this.words = words;
        zones = run.placement().zones().stream()
                .filter(z -> z.bay().equals(bay.id()))
                .toList();
        List<Stowed> here = run.placement().stowed().stream()
                .filter(s -> s.cargo().bay().equals(bay.id()))
                .toList();
        before = here.stream().mapToLong(Stowed::overFront).max().orElse(0);
        long behind = here.stream().mapToLong(Stowed::overRear).max().orElse(0);
        scale = (WIDTH - 2.0 * EDGE) / (before + run.outfit().lengthOf(bay) + behind);
    }

    String svg() {
        List<Heap> heaps = heaps();
        int rows = heaps.stream().mapToInt(h -> h.row() + 1).max().orElse(1);
        int bottom = HEAD + 2 * RAIL + rows * ROW;
        svg.append(Svg.format(
                "<rect class=\"fs-floor\" x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"%d\"/>",
                x(0), HEAD, run.outfit().lengthOf(bay) * scale, bottom - HEAD));
        zones.forEach(z -> zone(z, bottom));
        heaps.forEach(this::heap);
        heaps.forEach(h -> rings(h, bottom));
        return Svg.framed("fs-floor-plan", WIDTH, bottom + EDGE, label(heaps), svg);
    }

    private double x(double behindFront) {
        return EDGE + (before + behindFront) * scale;
    }

    private void zone(Zone zone, int bottom) {
        double left = x(zone.fromMillimetres());
        double width = zone.lengthMillimetres() * scale;
        svg.append(Svg.format(
                "<text x=\"%.1f\" y=\"%d\">%s</text>",
                left + 3,
                HEAD - 8,
                Svg.escaped(Svg.cut(
                        LoadWords.zone(zone.number(), zones.size()) + ": " + words.mass(zone.grams()), width))));
        if (zone.number() > 1) {
            svg.append(Svg.format("<path class=\"fs-border\" d=\"M%.1f %d V%d\"/>", left, HEAD, bottom));
        }
    }

    /** Each in the first row in which it covers no other. */
    private List<Heap> heaps() {
        List<Heap> heaps = new ArrayList<>();
        for (TripLoads.Item item : run.items()) {
            for (Stowed stowed : item.places()) {
                if (stowed.cargo().bay().equals(bay.id())) {
                    heaps.add(new Heap(item, stowed, rowFor(stowed, heaps)));
                }
            }
        }
        return heaps;
    }

    private static int rowFor(Stowed stowed, List<Heap> heaps) {
        int row = 0;
        while (isTaken(row, stowed, heaps)) {
            row++;
        }
        return row;
    }

    private static boolean isTaken(int row, Stowed stowed, List<Heap> heaps) {
        return heaps.stream()
                .anyMatch(h -> h.row() == row
                        && h.stowed().from() < stowed.from() + stowed.length()
                        && stowed.from() < h.stowed().from() + h.stowed().length());
    }

    private void heap(Heap heap) {
        Stowed stowed = heap.stowed();
        double left = x(stowed.from() - (double) stowed.overFront()) + 3;
        double width = (stowed.length() + (double) stowed.overFront() + stowed.overRear()) * scale - 6;
        int top = HEAD + RAIL + heap.row() * ROW + 2;
        String text = "%d: %d × %s"
                .formatted(
                        heap.item().off(),
                        stowed.packs(),
                        stowed.cargo().packs().name());
        svg.append(Svg.format(
                "<g><title>%s</title><rect class=\"fs-piece\" x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"%d\" rx=\"2\"/>"
                        + "<text x=\"%.1f\" y=\"%d\">%s</text></g>",
                Svg.escaped(text + ", " + words.mass(stowed.grams())),
                left,
                top,
                width,
                BOX,
                left + 5,
                top + 15,
                Svg.escaped(Svg.cut(text, width - 8))));
    }

    /** On both rails, spread over what they hold. */
    private void rings(Heap heap, int bottom) {
        int places = heap.item().places().size();
        int first = heap.item().places().indexOf(heap.stowed());
        int all = heap.item().restraint().leastTies();
        int ties = all * (first + 1) / places - all * first / places;
        // several heaps of one zone each want rings of their own
        double aside = heap.row() * 11.0;
        for (int i = 0; i < ties; i++) {
            double at = x(heap.stowed().from() + heap.stowed().length() * (i + 0.5) / ties) + aside % 33 - 11;
            for (int y : List.of(HEAD + (int) RING + 3, bottom - (int) RING - 3)) {
                svg.append(Svg.format("<circle class=\"fs-ring\" cx=\"%.1f\" cy=\"%d\" r=\"%.1f\"/>", at, y, RING));
            }
        }
    }

    private String label(List<Heap> heaps) {
        return "%s from above, front to the left: %s"
                .formatted(
                        bay.name(),
                        heaps.isEmpty()
                                ? "empty"
                                : heaps.stream()
                                        .map(h -> "%d of %s, %s"
                                                .formatted(
                                                        h.stowed().packs(),
                                                        h.stowed()
                                                                .cargo()
                                                                .packs()
                                                                .name(),
                                                        words.mass(h.stowed().grams())))
                                        .collect(Collectors.joining("; ")));
    }
}
