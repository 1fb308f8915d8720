package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.measure.Volume;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Worksheet;

@Described("Digging: what lies in the ground, what it becomes loose, what is put back and what must go.")
public record Dig(
        @Described("Shape from above: '12 ft x 10 ft', 'round 8 ft', 'ring 8 ft, 6 ft' or corners.")
        PlanShape plan,

        @Described(value = "Depth.", least = "50 mm", most = "6 m")
        Length depth,

        @Described(value = "The ground.", usual = "earth") Earthwork.Ground ground,

        @Described(value = "What is put back, compacted.", least = "0 m3", most = "5000 m3", usual = "0 m3")
        Volume backfill,

        @Described(
                value = "What compacted fill loses against the ground, in percent.",
                least = "0",
                most = "40",
                usual = "10")
        int shrinkPercent,

        @Described(value = "Ground dug in an hour of labour.", least = "0.05 m3", most = "60 m3", usual = "0.5 yd3")
        Volume volumePerHour) {

    private static final double UNSUPPORTED_DEPTH = 1.2;

    public Worksheet work() {
        Sheet sheet = new Sheet();
        double bank = plan.area() * depth.amount();
        sheet.add(Line.answer("in-ground", "Volume in the ground", Amount.bulk(bank))
                .by("V = A d", term("A", "area", Amount.area(plan.area())), term("d", "depth", Amount.length(depth))));
        double swell = ground.swell();
        sheet.add(Line.answer("loose", "Loose beside the hole", Amount.bulk(Earthwork.loose(bank, swell)))
                .by(
                        "L = V (1 + s)",
                        term("V", "in the ground", Amount.bulk(bank)),
                        term("s", "swell", Amount.percent(swell)))
                .from(Source.seen("swell tables; 10 points of spread")));
        double kept = Earthwork.inGroundFor(backfill.amount(), shrinkPercent / 100.0);
        if (kept > bank + 1e-9) {
            throw new Refusal(
                    "backfill",
                    backfill,
                    "takes more ground than is dug",
                    Enter.atMostVolume(bank * (1 - shrinkPercent / 100.0)) + ", or order fill");
        }
        sheet.add(Line.step("kept", "Kept to put back, as it lay", Amount.bulk(kept))
                .by(
                        "K = B / (1 - k)",
                        term("B", "put back", Amount.bulk(backfill.amount())),
                        term("k", "shrink", Amount.percent(shrinkPercent / 100.0)))
                .from(Sources.EARTH));
        sheet.add(
                Line.answer("haul-off", "Loose to spread or haul off", Amount.bulk(Earthwork.loose(bank - kept, swell)))
                        .by(
                                "H = (V - K) (1 + s)",
                                term("V", "in the ground", Amount.bulk(bank)),
                                term("K", "kept", Amount.bulk(kept)),
                                term("s", "swell", Amount.percent(swell))));
        sheet.add(Line.labour(bank / volumePerHour.amount())
                .by(
                        "T = V / r",
                        term("V", "in the ground", Amount.bulk(bank)),
                        term("r", "dug in an hour", Amount.bulk(volumePerHour.amount())))
                .from(Source.practice("half a cubic yard an hour by hand"))
                .heed("Have buried lines marked first; keep spoil and machines back from the edge."));
        if (depth.amount() > UNSUPPORTED_DEPTH) {
            sheet.add(Finding.engineer(
                    "Deeper than 1.2 m (nearly 4 ft): sides need slope or support, and a way out. Never alone."));
        }
        if (ground == Earthwork.Ground.BLASTED_ROCK) {
            sheet.add(Finding.note(
                    "Blasting is for licensed people; the hours here are those of loading what lies loose."));
        }
        return sheet.done();
    }
}
