package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Whole;
import org.firmset.trade.trace.Worksheet;

@Described("Form boards along an edge, with stakes from the same boards.")
public record Forms(
        @Described(value = "Edge to form, all sides together.", least = "0.2 m", most = "500 m")
        Length edge,

        @Described(
                value = "Inner forms besides: a key, the other side of a footing.",
                least = "0 m",
                most = "500 m",
                usual = "0 m")
        Length inner,

        @Described(value = "Height of the form.", least = "50 mm", most = "1.2 m", usual = "5 1/2 in")
        Length height,

        @Described(value = "Height of one board.", least = "50 mm", most = "1.25 m", usual = "5 1/2 in")
        Length boardHeight,

        @Described(value = "Length of a board.", least = "1 m", most = "8 m", usual = "16 ft")
        Length boardLength,

        @Described(value = "Distance of the stakes.", least = "0.3 m", most = "2 m", usual = "4 ft")
        Length stakeSpacing,

        @Described(
                value = "Length of a stake; 0 when stakes are bought or at hand.",
                least = "0 m",
                most = "2 m",
                usual = "24 in")
        Length stake,

        @Described(value = "Waste in percent.", least = "0", most = "50", usual = "0")
        int wastePercent,

        @Described(value = "Edge formed in an hour of labour.", least = "0.2 m", most = "30 m", usual = "10 ft")
        Length edgePerHour) {

    private static final double HIGH = 2 * 0.3048;

    public Worksheet work() {
        Sheet sheet = new Sheet();
        if (stake.amount() > boardLength.amount()) {
            throw new Refusal("stake", stake, "is longer than a board", Enter.atMost(boardLength.amount()));
        }
        if (stake.value().signum() > 0 && stake.value().compareTo(height.value()) <= 0) {
            throw new Refusal(
                    "stake",
                    stake,
                    "is no longer than the form is high, so nothing of it stands in the ground",
                    "Enter more than " + height + ", or 0 when stakes are at hand");
        }
        double run = edge.amount() + inner.amount();
        long rows = Whole.up(height.amount() / boardHeight.amount());
        long stakes = Whole.up(edge.amount() / stakeSpacing.amount());
        double length = run * rows + stakes * stake.amount();
        sheet.add(Line.step("rows", "Boards above each other", Amount.count(rows, ""))
                .by(
                        "r = H / b, rounded up",
                        term("H", "height", Amount.length(height)),
                        term("b", "board", Amount.length(boardHeight))));
        sheet.add(Line.step("stakes", "Stakes", Amount.count(stakes, "stakes"))
                .by(
                        "s = E / d, rounded up",
                        term("E", "edge", Amount.length(edge)),
                        term("d", "distance", Amount.length(stakeSpacing)))
                .from(Source.PRACTICE)
                .heed("One more at every joint and free end."));
        if (height.amount() > HIGH + 1e-9) {
            sheet.add(Finding.warning(
                    "Forms higher than 2 ft (0.6 m) carry fresh concrete like water: stakes alone do not hold"
                            + " them; tie, brace and fill in layers (common practice)."));
        }
        sheet.add(Line.material(
                        "boards",
                        "Boards",
                        Amount.packs(length * (1 + wastePercent / 100.0) / boardLength.amount(), "boards"))
                .by(
                        "N = ((E + I) r + s l) (1 + w) / L, rounded up",
                        term("E", "edge", Amount.length(edge)),
                        term("I", "inner forms", Amount.length(inner)),
                        term("r", "boards above each other", Amount.count(rows, "")),
                        term("s", "stakes", Amount.count(stakes, "")),
                        term("l", "length of a stake", Amount.length(stake)),
                        term("w", "waste", Amount.percent(wastePercent / 100.0)),
                        term("L", "length of a board", Amount.length(boardLength)))
                .heed("Brace forms; do not strip, load or lean on them early. Do not build form boards into a frame."));
        sheet.add(Line.labour(run / edgePerHour.amount())
                .by(
                        "T = (E + I) / r",
                        term("E", "edge", Amount.length(edge)),
                        term("I", "inner forms", Amount.length(inner)),
                        term("r", "edge in an hour", Amount.length(edgePerHour)))
                .from(Source.PRACTICE));
        return sheet.done();
    }
}
