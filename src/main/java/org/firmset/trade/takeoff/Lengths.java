package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Worksheet;

@Described("Pipe, cable, trim or board by its total length, where joints may lie anywhere.")
public record Lengths(
        @Described(value = "Length needed.", least = "50 mm", most = "5 km")
        Length total,

        @Described(
                value = "Waste in percent: ends, fittings, slack in the trench.",
                least = "0",
                most = "50",
                usual = "5")
        int wastePercent,

        @Described(value = "Length as it is sold.", least = "0.3 m", most = "500 m", usual = "20 ft")
        Length pack) {

    public Worksheet work() {
        double gross = total.amount() * (1 + wastePercent / 100.0);
        return new Sheet()
                .add(Line.step("with-waste", "Length with waste", Amount.length(gross))
                        .by(
                                "G = L (1 + w)",
                                term("L", "needed", Amount.length(total)),
                                term("w", "waste", Amount.percent(wastePercent / 100.0)))
                        .from(Source.PRACTICE))
                .add(Line.material("pieces", "To buy", Amount.packs(gross / pack.amount(), "pieces"))
                        .by(
                                "N = G / l, rounded up",
                                term("G", "with waste", Amount.length(gross)),
                                term("l", "length as sold", Amount.length(pack))))
                .add(Finding.note("Where no joint may lie in a piece, use the cut list instead."))
                .done();
    }
}
