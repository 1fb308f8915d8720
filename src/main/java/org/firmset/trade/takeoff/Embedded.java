package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import org.firmset.measure.Described;
import org.firmset.measure.Mass;
import org.firmset.measure.Volume;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;

@Described("What lies in the pour and takes its room.")
public record Embedded(
        @Described(value = "Mass of the bars in it.", least = "0 kg", most = "5 t", usual = "0 kg")
        Mass steel,

        @Described(
                value = "Volume of sleeves, brackets and places blocked out.",
                least = "0 m3",
                most = "20 m3",
                usual = "0 m3")
        Volume sleeves) {

    /** Takes it off a gross volume in cubic metres and adds the line of the net volume. */
    double addNet(Sheet sheet, double gross) {
        double bars = steel.amount() / BarSize.STEEL_KILOGRAMS_PER_CUBIC_METRE;
        double net = gross - bars - sleeves.amount();
        if (!(net > 0)) {
            throw new Refusal(
                    sleeves.value().signum() > 0 ? "sleeves" : "steel",
                    sleeves.value().signum() > 0 ? sleeves : steel,
                    "takes up the whole pour",
                    "Enter what lies in this pour of " + Volume.ofCubicMetres(Math.round(gross * 1000) / 1000.0)
                            + " only");
        }
        sheet.add(Line.answer("volume", "Concrete in place", Amount.volume(net))
                .by(
                        "V = G - s / d - e",
                        term("G", "volume between the forms", Amount.volume(gross)),
                        term("s", "bars", Amount.mass(steel.amount())),
                        term("d", "density of steel", Amount.density(BarSize.STEEL_KILOGRAMS_PER_CUBIC_METRE)),
                        term("e", "sleeves and brackets", Amount.volume(sleeves.amount()))));
        return net;
    }
}
