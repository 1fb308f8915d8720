package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import java.math.BigDecimal;
import org.firmset.measure.Described;
import org.firmset.measure.Mass;
import org.firmset.measure.Volume;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Whole;

@Described("The bags a pour is mixed from, and how fast.")
public record BagMix(
        @Described(value = "Waste in percent.", least = "0", most = "50", usual = "10")
        int wastePercent,

        @Described(value = "What a bag makes.", least = "3 L", most = "60 L", usual = "0.6 ft3")
        Volume bagYield,

        @Described(value = "Mass of a bag.", least = "5 kg", most = "60 kg", usual = "80 lb")
        Mass bagMass,

        @Described(value = "Mixing water for a bag.", least = "0.5 L", most = "15 L", usual = "3 qt")
        Volume waterPerBag,

        @Described(value = "Bags mixed and placed in an hour of labour.", least = "0.5", most = "60", usual = "5")
        BigDecimal bagsPerHour,

        @Described(value = "Hours to set up, finish and wash.", least = "0", most = "100", usual = "1.15")
        BigDecimal otherHours) {

    private static final double LEAST_OF_USUAL = 0.5;
    private static final double MOST_OF_USUAL = 1.6;
    private static final double KILOGRAMS_PER_CUBIC_METRE = 1000;
    /** Shares of the mass of a bag; labels of 80 lb ask for 3 to 5 qt, which is 8 to 13 %. */
    private static final double LEAST_WATER = 0.06;

    private static final double MOST_WATER = 0.14;

    /**
     * Adds waste, bags, mass, water and labour.
     *
     * @param netVolume in cubic metres, over 0
     */
    void addBags(Sheet sheet, double netVolume) {
        requirePlausibleYield();
        double gross = netVolume * (1 + wastePercent / 100.0);
        double bags = gross / bagYield.amount();
        long whole = Whole.up(bags);
        sheet.add(Line.step("volume-with-waste", "Volume with waste", Amount.volume(gross))
                .by(
                        "G = V (1 + w)",
                        term("V", "net volume", Amount.volume(netVolume)),
                        term("w", "waste", Amount.percent(wastePercent / 100.0)))
                .from(Source.practice("5 to 10 % for small pours")));
        sheet.add(Line.material("bags", "Bags of mix", Amount.packs(bags, "bags"))
                .by(
                        "B = G / y, rounded up once",
                        term("G", "volume with waste", Amount.volume(gross)),
                        term("y", "yield of a bag", Amount.volume(bagYield.amount())))
                .from(Sources.BAG_LABELS)
                .heed("The yield printed on the bag comes first."));
        sheet.add(Line.answer("bag-mass", "Mass of the bags", Amount.mass(whole * bagMass.amount()))
                .by(
                        "M = B m",
                        term("B", "bags", Amount.count(whole, "")),
                        term("m", "mass of a bag", Amount.mass(bagMass.amount()))));
        addWater(sheet, whole);
        addLabour(sheet, whole);
    }

    private void requirePlausibleYield() {
        double usual = BagYield.ofMass(bagMass.amount());
        double ratio = bagYield.amount() / usual;
        if (ratio < LEAST_OF_USUAL || ratio > MOST_OF_USUAL) {
            throw new Refusal(
                    "bagYield",
                    bagYield,
                    "does not go with a bag of " + bagMass + ", which makes about " + litres(usual),
                    "Enter from " + litres(LEAST_OF_USUAL * usual) + " to " + litres(MOST_OF_USUAL * usual)
                            + " for this bag, as its label says");
        }
    }

    private static String litres(double cubicMetres) {
        return Math.round(cubicMetres * 10_000) / 10.0 + " L";
    }

    private void addWater(Sheet sheet, long bags) {
        double mixing = bags * waterPerBag.amount();
        double share = waterPerBag.amount() * KILOGRAMS_PER_CUBIC_METRE / bagMass.amount();
        if (share < LEAST_WATER || share > MOST_WATER) {
            sheet.add(Finding.warning(
                    ("The mixing water is %d %% of the mass of the bag; labels ask for about 6 to 14 %%. Read it"
                                    + " on the bag.")
                            .formatted(Math.round(share * 100))));
        }
        sheet.add(Line.material("mixing-water", "Mixing water", Amount.liquid(mixing))
                .by(
                        "W = B q",
                        term("B", "bags", Amount.count(bags, "")),
                        term("q", "water for a bag", Amount.liquid(waterPerBag.amount())))
                .from(Source.practice("the bag says how much; more water makes weaker concrete"))
                .heed("Start with less and add by the cup; never re-wet a batch that has begun to stiffen."));
        sheet.add(Line.material("wash-water", "Water to wash up", Amount.liquid(mixing))
                .by("about as much again", term("W", "mixing water", Amount.liquid(mixing)))
                .from(Source.PRACTICE));
    }

    private void addLabour(Sheet sheet, long bags) {
        double hours = bags / bagsPerHour.doubleValue() + otherHours.doubleValue();
        sheet.add(Line.labour(hours)
                .by(
                        "T = B / r + f",
                        term("B", "bags", Amount.count(bags, "")),
                        term(
                                "r",
                                "bags mixed and placed in an hour of labour",
                                Amount.number(bagsPerHour.doubleValue(), 2, "")),
                        term("f", "setting up, finishing and washing", Amount.hours(otherHours.doubleValue())))
                .from(Source.practice("3 to 6 bags an hour by hand; replace with your own log"))
                .heed("Wet cement burns skin: waterproof gloves and boots, rinse at once."));
        sheet.add(
                Finding.note("Sums first, then waste, then rounded up to whole bags once. A pour that must end the same"
                        + " day needs all its bags, its water and a finish before dark."));
    }
}
