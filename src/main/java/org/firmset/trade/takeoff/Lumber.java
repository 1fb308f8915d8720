package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import java.util.List;
import java.util.Locale;
import org.firmset.measure.Density;
import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.trade.takeoff.cutting.CutPlan;
import org.firmset.trade.takeoff.cutting.CuttingStock;
import org.firmset.trade.takeoff.cutting.Demand;
import org.firmset.trade.takeoff.cutting.Stock;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Whole;
import org.firmset.trade.trace.Worksheet;

@Described("Boards of one section for a list of pieces: count, mass and volume.")
public record Lumber(
        @Described("The pieces, such as '48 x 92 5/8 in, 5 x 16 ft'.")
        Pieces pieces,

        @Described(value = "Length of a board.", least = "1 m", most = "12 m", usual = "16 ft")
        Length board,

        @Described(value = "Boards more in percent, for split and crooked ones.", least = "0", most = "50", usual = "5")
        int wastePercent,

        @Described(value = "Real thickness.", least = "10 mm", most = "300 mm", usual = "1 1/2 in")
        Length thickness,

        @Described(value = "Real width.", least = "20 mm", most = "600 mm", usual = "5 1/2 in")
        Length width,

        @Described(
                value = "Density; fresh from the yard it may be half as much again.",
                least = "300 kg/m3",
                most = "1200 kg/m3",
                usual = "35 lb/ft3")
        Density density,

        @Described(value = "Width of a cut.", least = "0 mm", most = "12 mm", usual = "1/8 in")
        Length kerf) {

    private static final double UNITS_PER_METRE = 160_000;

    public Worksheet work() {
        if (pieces.all().isEmpty()) {
            throw new Refusal("pieces", pieces, "names no piece", "Enter at least one, such as '48 x 92 5/8 in'");
        }
        for (Pieces.Piece piece : pieces.all()) {
            if (piece.length().value().compareTo(board.value()) > 0) {
                throw new Refusal(
                        "pieces",
                        piece.length(),
                        "is longer than a board of " + board,
                        Enter.atMost(board.amount()) + ", or longer boards");
            }
        }
        CutPlan plan = CuttingStock.plan(
                        List.of(new Stock(units(board), 1, Stock.UNLIMITED)),
                        // down: so many pieces as divide a board must not fail by what nine decimals round off
                        pieces.all().stream()
                                .map(p -> new Demand(Whole.down(p.length().amount() * UNITS_PER_METRE), p.count()))
                                .toList(),
                        units(kerf))
                .orElseThrow();
        return sheet(plan);
    }

    private static long units(Length length) {
        return Math.round(length.amount() * UNITS_PER_METRE);
    }

    private Worksheet sheet(CutPlan plan) {
        Sheet sheet = new Sheet();
        long cut = plan.cost();
        double boards = cut * (1 + wastePercent / 100.0);
        double one = board.amount() * thickness.amount() * width.amount();
        sheet.add(Line.step("cut-boards", "Boards that the pieces need", Amount.count(cut, "boards"))
                .by("least number, see the cut list" + (plan.proven() ? "" : "; not proven least"))
                .from(Sources.CUTTING));
        sheet.add(Line.material("boards", "Boards", Amount.packs(boards, "boards"))
                .by(
                        "N = n (1 + w), rounded up",
                        term("n", "for the pieces", Amount.count(cut, "")),
                        term("w", "more", Amount.percent(wastePercent / 100.0)))
                .from(Source.PRACTICE));
        long whole = Whole.up(boards);
        sheet.add(Line.step("volume", "Volume", Amount.volume(whole * one))
                .by(
                        "V = N l t b",
                        term("N", "boards", Amount.count(whole, "")),
                        term("l", "length", Amount.length(board)),
                        term("t", "thickness", Amount.thin(thickness.amount())),
                        term("b", "width", Amount.thin(width.amount()))));
        sheet.add(Line.answer("mass", "Mass", Amount.mass(whole * one * density.amount()))
                .by(
                        "M = V g",
                        term("V", "volume", Amount.volume(whole * one)),
                        term("g", "density", Amount.density(density.amount())))
                .from(Source.PRACTICE)
                .heed("Wet lumber weighs up to half as much again; long boards need a red flag behind."));
        sheet.add(Finding.note(String.format(
                Locale.ROOT,
                "The %d pieces take %.1f %% of the length bought.",
                pieces.count(),
                100 * pieces.total() / (whole * board.amount()))));
        return sheet.done();
    }
}
