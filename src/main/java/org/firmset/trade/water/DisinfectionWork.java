package org.firmset.trade.water;

import static org.firmset.trade.trace.Term.term;

import java.math.BigDecimal;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Worksheet;
import org.jspecify.annotations.Nullable;

/** How much chlorine, how long, and what is measured at the end. */
final class DisinfectionWork {
    /** The strongest liquid that is sold: swimming pools' 12.5 percent, with some room; common practice. */
    static final double STRONGEST_LIQUID = 16;
    /** The weakest dry product that is calcium hypochlorite; common practice. */
    static final double WEAKEST_DRY = 30;
    /** The most chlorine in drinking water in mg/L: 40 CFR 141.65, from memory. */
    static final double MOST_TO_DRINK = 4;

    private final Disinfection job;
    private final Sheet sheet = new Sheet();

    private DisinfectionWork(Disinfection job) {
        this.job = job;
    }

    static Worksheet work(Disinfection job) {
        refuse(job);
        return new DisinfectionWork(job).work();
    }

    private static void refuse(Disinfection job) {
        double strength = job.strengthPercent().doubleValue();
        if (job.disinfectant() == Disinfectant.LIQUID && strength > STRONGEST_LIQUID) {
            throw new Refusal(
                    "strengthPercent",
                    job.strengthPercent(),
                    "is stronger than liquid chlorine is sold",
                    "Enter at most 16, or choose the dry product");
        }
        if (job.disinfectant() == Disinfectant.DRY && strength < WEAKEST_DRY) {
            throw new Refusal(
                    "strengthPercent",
                    job.strengthPercent(),
                    "is weaker than dry chlorine is sold",
                    "Enter at least 30, or choose the liquid");
        }
        boolean pipes = job.method() == DisinfectionMethod.PIPES;
        if (!pipes && job.tankVolume().amount() == 0) {
            throw new Refusal(
                    "tankVolume",
                    job.tankVolume(),
                    "leaves no tank to disinfect",
                    "Enter the volume, or the method for pipes");
        }
        if (pipes && job.pipeLength().amount() == 0) {
            throw new Refusal(
                    "pipeLength",
                    job.pipeLength(),
                    "leaves no pipes to disinfect",
                    "Enter the length, or a method for a tank");
        }
    }

    private Worksheet work() {
        double volume = volume();
        double dose = dose();
        chlorine(volume, dose);
        after(dose);
        times();
        flush();
        cautions(dose);
        return sheet.done();
    }

    /** @return water in m3 that chlorine goes into */
    private double volume() {
        double tank = job.tankVolume().amount();
        double pipes = Disinfection.pipeVolume(
                job.pipeBore().amount(), job.pipeLength().amount());
        sheet.add(Line.step("pipe-volume", "Water in the pipes", Amount.liquid(pipes))
                .by(
                        "V = pi/4 d2 L",
                        term("d", "bore", Amount.thin(job.pipeBore().amount())),
                        term("L", "length", Amount.length(job.pipeLength())))
                .from(Sources.GEOMETRY));
        double volume = switch (job.method()) {
            case FULL_TANK -> tank + pipes;
            case WETTED_WALLS -> job.sprayVolume().amount();
            case BOTTOM_THEN_FILL -> tank * DisinfectionMethod.BOTTOM_SHARE;
            case PIPES -> pipes;
        };
        sheet.add(Line.material("water", "Water that is chlorinated", Amount.liquid(volume))
                .by(
                        switch (job.method()) {
                            case FULL_TANK -> "V = tank + pipes";
                            case WETTED_WALLS -> "V as mixed for the walls";
                            case BOTTOM_THEN_FILL -> "V = 5 % of the tank";
                            case PIPES -> "V = pipes";
                        },
                        term("tank", "volume of the tank", Amount.liquid(tank)),
                        term("pipes", "water in the pipes", Amount.liquid(pipes)))
                .from(job.method() == DisinfectionMethod.BOTTOM_THEN_FILL ? Sources.STORAGE_TIMES : Sources.GEOMETRY));
        return volume;
    }

    private double dose() {
        @Nullable BigDecimal given = job.doseMgPerLitre();
        double dose = given == null ? job.method().dose() : given.doubleValue();
        sheet.add(Line.step("dose", "Chlorine at first", milligrams(dose))
                .by(given == null ? "usual for the method" : "as entered")
                .from(given == null ? job.method().doseSource() : Source.PRACTICE));
        return dose;
    }

    private static Amount milligrams(double value) {
        return Amount.number(value, 1, "mg/L");
    }

    private void chlorine(double volume, double dose) {
        double strength = job.strengthPercent().doubleValue() / 100;
        boolean liquid = job.disinfectant() == Disinfectant.LIQUID;
        Line line = liquid
                ? Line.material(
                        "chlorine-liquid",
                        "Liquid chlorine (sodium hypochlorite)",
                        Amount.liquid(Chlorine.liquid(volume, dose, strength)))
                : Line.material(
                        "chlorine-dry",
                        "Dry chlorine (calcium hypochlorite)",
                        Amount.mass(Chlorine.dry(volume, dose, strength)));
        sheet.add(line.by(
                        liquid ? "v = V c / (1,000,000 s)" : "m = 1,000 kg/m3 V c / (1,000,000 s)",
                        term("V", "water that is chlorinated", Amount.liquid(volume)),
                        term("c", "chlorine at first", milligrams(dose)),
                        term("s", "strength", Amount.percent(strength)))
                .from(Sources.DOSE)
                .heed("Plain, unscented, marked for drinking water (NSF/ANSI/CAN 60), without stabilizer. Never mix it"
                        + " with acid, ammonia, other cleaners or the other kind of chlorine: poison gas, fire."
                        + " Goggles, gloves, fresh air; product into water, not water onto product."));
    }

    private void after(double dose) {
        double left = job.method().left();
        if (left > 0) {
            sheet.add(Line.answer("left", "Free chlorine that must be left at the end", milligrams(left))
                    .from(job.method().source())
                    .heed("Measure it; if less is left, begin again."));
            if (dose < left) {
                sheet.add(Finding.warning("The chlorine at first is less than must be left at the end."));
            }
        }
        if (job.method() == DisinfectionMethod.BOTTOM_THEN_FILL) {
            double filled = dose * DisinfectionMethod.BOTTOM_SHARE;
            sheet.add(Line.step("after-filling", "Chlorine after filling up, if none is used up", milligrams(filled))
                    .by("c / 20", term("c", "chlorine at first", milligrams(dose))));
            if (filled < left) {
                sheet.add(Finding.warning(
                        "Filled up with water without chlorine, too little is left: add chlorine while filling."));
            }
        }
    }

    private void times() {
        sheet.add(Line.answer(
                        "contact", "Hours of contact", Amount.hours(job.method().hours()))
                .from(job.method().timeSource())
                .heed("Contact times differ between texts; the local health office comes first."));
        switch (job.method()) {
            case BOTTOM_THEN_FILL ->
                sheet.add(Line.answer(
                                "contact-full",
                                "Hours the full tank then stands",
                                Amount.hours(DisinfectionMethod.FILLED_HOURS))
                        .from(Sources.STORAGE));
            case WETTED_WALLS ->
                sheet.add(Finding.warning(
                        "Spraying inside a tank is work in a confined space with chlorine in the air: never go in alone"
                                + " or without breathing protection and training. Another method keeps you outside."));
            case FULL_TANK, PIPES -> {}
        }
    }

    /** Whether there are pipes that this method does not reach. */
    private boolean leavesPipes() {
        return switch (job.method()) {
            case FULL_TANK, PIPES -> false;
            case WETTED_WALLS, BOTTOM_THEN_FILL -> job.pipeLength().amount() > 0;
        };
    }

    private void flush() {
        sheet.add(Line.step("to-drink", "Most chlorine to drink, after flushing", milligrams(MOST_TO_DRINK))
                .from(Sources.CHLORINE_LIMIT)
                .heed("Flush until it is under this and does not smell, then have a sample tested for bacteria before"
                        + " anybody drinks."));
    }

    private void cautions(double dose) {
        if (dose > MOST_TO_DRINK) {
            sheet.add(Finding.warning(
                    "The strong water kills fish and plants: never into a stream, ditch or septic tank. Let it stand or"
                            + " neutralize it, spread it on bare ground where the local office allows, and mark every"
                            + " tap until it is flushed."));
        }
        if (leavesPipes()) {
            sheet.add(Finding.note("The pipes are not in this: do them by the method for pipes."));
        }
        if (job.disinfectant() == Disinfectant.LIQUID) {
            sheet.add(Finding.note(
                    "Liquid chlorine loses strength with age and heat: take it fresh and measure what the water has."));
        }
    }
}
