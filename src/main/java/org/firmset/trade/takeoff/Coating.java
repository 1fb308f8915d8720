package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import java.math.BigDecimal;
import org.firmset.measure.Area;
import org.firmset.measure.Described;
import org.firmset.measure.Volume;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Worksheet;

@Described("Paint, primer or sealer for an area.")
public record Coating(
        @Described(value = "Area to coat.", least = "0.1 m2", most = "5000 m2")
        Area area,

        @Described(value = "Coats.", least = "1", most = "6", usual = "1")
        int coats,

        @Described(
                value = "Area that the volume below covers once.",
                least = "1 m2",
                most = "500 m2",
                usual = "100 ft2")
        Area covers,

        @Described(value = "The volume that covers it.", least = "0.05 L", most = "50 L", usual = "1 gal")
        Volume coverVolume,

        @Described(value = "Volume of a can or pail.", least = "0.1 L", most = "250 L", usual = "5 gal")
        Volume pack,

        @Described(value = "Waste in percent.", least = "0", most = "50", usual = "0")
        int wastePercent,

        @Described(value = "Area coated in an hour of labour.", least = "0.5 m2", most = "100 m2", usual = "80 ft2")
        Area areaPerHour,

        @Described(value = "Hours to prepare and clean up.", least = "0", most = "40", usual = "1.2")
        BigDecimal otherHours) {

    public Worksheet work() {
        double coated = area.amount() * coats;
        double liquid = coated / covers.amount() * coverVolume.amount() * (1 + wastePercent / 100.0);
        return new Sheet()
                .add(Line.answer("liquid", "Needed", Amount.liquid(liquid))
                        .by(
                                "V = A n v / c (1 + w)",
                                term("A", "area", Amount.area(area.amount())),
                                term("n", "coats", Amount.count(coats, "")),
                                term("v", "so much", Amount.liquid(coverVolume.amount())),
                                term("c", "covers", Amount.area(covers.amount())),
                                term("w", "waste", Amount.percent(wastePercent / 100.0)))
                        .from(Source.practice(
                                "the can says how far it goes; rough sheets take twice as much as smooth ones")))
                .add(Line.material("cans", "To buy", Amount.packs(liquid / pack.amount(), "cans"))
                        .by(
                                "rounded up",
                                term("V", "needed", Amount.liquid(liquid)),
                                term("p", "in a can", Amount.liquid(pack.amount())))
                        .heed("Keep from freezing; mind the can's limits of temperature and damp, and fresh air."))
                .add(Line.labour(coated / areaPerHour.amount() + otherHours.doubleValue())
                        .by(
                                "T = A n / r + f",
                                term("A", "area", Amount.area(area.amount())),
                                term("n", "coats", Amount.count(coats, "")),
                                term("r", "area in an hour", Amount.area(areaPerHour.amount())),
                                term("f", "preparing", Amount.hours(otherHours.doubleValue())))
                        .from(Source.PRACTICE))
                .done();
    }
}
