package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import java.math.BigDecimal;
import org.firmset.measure.Described;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Worksheet;

@Described("A free line for anything else: how many, what more, and why.")
public record Counted(
        @Described(value = "How many are needed; parts of a pack are fine.", least = "0.001", most = "100000")
        BigDecimal number,

        @Described(value = "Parts in a pack.", least = "0.001", most = "100000", usual = "1")
        BigDecimal perPack,

        @Described(value = "Waste in percent.", least = "0", most = "100", usual = "0")
        int wastePercent,

        @Described(value = "What a pack is called.", usual = "pieces")
        String pack,

        @Described(value = "Where the number comes from.", usual = "counted on the drawing")
        String why) {

    private static final int LONGEST_NAME = 40;
    private static final int LONGEST_REASON = 200;

    public Worksheet work() {
        refuse("pack", pack, LONGEST_NAME);
        refuse("why", why, LONGEST_REASON);
        double packs = number.doubleValue() * (1 + wastePercent / 100.0) / perPack.doubleValue();
        return new Sheet()
                .add(Line.material("packs", "To buy", Amount.packs(packs, pack))
                        .by(
                                "N = n (1 + w) / p, rounded up",
                                term("n", "needed", Amount.number(number.doubleValue(), 3, "")),
                                term("w", "waste", Amount.percent(wastePercent / 100.0)),
                                term("p", "in a pack", Amount.number(perPack.doubleValue(), 3, "")))
                        .from(Source.practice(why)))
                .done();
    }

    private static void refuse(String input, String text, int longest) {
        if (text.isBlank() || text.length() > longest) {
            throw new Refusal(
                    input,
                    text.length() > longest ? text.substring(0, longest) + "..." : text,
                    text.isBlank() ? "says nothing" : "is too long",
                    "Enter from 1 to " + longest + " letters");
        }
    }
}
