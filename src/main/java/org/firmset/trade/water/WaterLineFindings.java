package org.firmset.trade.water;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.water.LineFlow.AtLevel;
import org.firmset.trade.water.LineFlow.Drawn;

/** What is to be said about what comes out of the outlets of a water line. */
final class WaterLineFindings {
    /** Speed over which pipes are noisy and knock, 8 ft/s; common practice. */
    static final double FAST = 8 * UsUnits.FOOT;

    /** How much more one law of friction may give than the other before it is said. */
    static final double LAWS_DIFFER = 1.15;

    private final FrictionLaw law;
    private final LineFlow flow;
    private final List<AtLevel> levels;
    private final List<Finding> found = new ArrayList<>();

    /** @param levels the full tank first */
    WaterLineFindings(FrictionLaw law, LineFlow flow, List<AtLevel> levels) {
        this.law = law;
        this.flow = flow;
        this.levels = levels;
    }

    List<Finding> all() {
        dry();
        tooLittle("one at a time", AtLevel::alone);
        tooLittle("all together", AtLevel::together);
        speeds();
        uncertainty();
        laws();
        return found;
    }

    private void dry() {
        for (AtLevel at : levels) {
            String above = names(at.alone(), d -> d.flow() == 0);
            if (!above.isEmpty()) {
                found.add(Finding.warning("No water from a tank that is "
                        + at.level().words() + ", as the end lies at or above the water: " + above + "."));
            }
            List<Drawn> starved = new ArrayList<>();
            for (int i = 0; i < at.together().size(); i++) {
                if (at.together().get(i).flow() == 0 && at.alone().get(i).flow() > 0) {
                    starved.add(at.together().get(i));
                }
            }
            if (!starved.isEmpty()) {
                found.add(Finding.warning("No water while all outlets are open, from a tank that is "
                        + at.level().words() + ", as the others draw the pressure down: " + names(starved, d -> true)
                        + "."));
            }
        }
    }

    /** Says it of the fullest tank that falls short: of a lower one it is then clear. */
    private void tooLittle(String how, Function<AtLevel, List<Drawn>> open) {
        for (AtLevel at : levels) {
            String names = names(open.apply(at), d -> !d.enough());
            if (!names.isEmpty()) {
                found.add(Finding.warning("Less than the wanted flow or pressure from a tank that is "
                        + at.level().words() + ", outlets open " + how + ": " + names + "."));
                return;
            }
        }
    }

    private static String names(List<Drawn> drawn, Predicate<Drawn> which) {
        return drawn.stream().filter(which).map(d -> d.outlet().name()).collect(Collectors.joining(", "));
    }

    private void speeds() {
        AtLevel full = levels.getFirst();
        double main =
                Friction.velocity(LineFlow.total(full.together()), flow.main().bore());
        double branch = full.alone().stream().mapToDouble(Drawn::speed).max().orElseThrow();
        if (Math.max(main, branch) > FAST) {
            found.add(Finding.warning(
                    "The water runs faster than 8 ft/s (2.4 m/s); 5 to 8 ft/s (1.5 to 2.4 m/s) is common practice"
                            + " against noise, wear and water hammer. A wider pipe is slower."));
        }
    }

    private void uncertainty() {
        List<Double> reynolds = reynolds();
        boolean between = reynolds.stream().anyMatch(Friction::uncertain);
        boolean slow = reynolds.stream().anyMatch(re -> re > 0 && re < Friction.TURBULENT);
        switch (law) {
            case DARCY_WEISBACH -> {
                if (between) {
                    found.add(Finding.note(
                            "Somewhere the Reynolds number lies between 2,300 and 4,000: there flow changes between"
                                    + " smooth and turbulent and friction is uncertain."));
                }
            }
            case HAZEN_WILLIAMS -> {
                if (slow) {
                    found.add(Finding.note("Somewhere the Reynolds number is under 4,000: Hazen and Williams hold for"
                            + " turbulent water only. Look at the other law."));
                }
            }
        }
    }

    private void laws() {
        double total = LineFlow.total(levels.getFirst().together());
        double one = flow.main().frictionHead(total, law, flow.viscosity());
        double other = flow.main().frictionHead(total, law.other(), flow.viscosity());
        if (Math.max(one, other) > LAWS_DIFFER * Math.min(one, other)) {
            found.add(Finding.note(
                    "The two laws of friction differ by more than 15 % in the main. Hazen and Williams know no"
                            + " temperature and fit slow or cold water in narrow smooth pipe less well."));
        }
    }

    private List<Double> reynolds() {
        List<Double> all = new ArrayList<>();
        for (AtLevel at : levels) {
            all.add(inMain(LineFlow.total(at.together())));
            at.together().forEach(drawn -> all.add(drawn.reynolds()));
            for (Drawn drawn : at.alone()) {
                all.add(inMain(drawn.flow()));
                all.add(drawn.reynolds());
            }
        }
        return all;
    }

    private double inMain(double total) {
        return Friction.reynolds(total, flow.main().bore(), flow.viscosity());
    }
}
