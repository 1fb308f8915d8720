package org.firmset.season.day;

import java.time.LocalDate;
import java.util.Optional;
import org.firmset.homestead.Stage;
import org.firmset.measure.Measured;
import org.firmset.trade.climate.Conditions;
import org.firmset.trade.climate.SiteDayOdds;

/** Odds that the weather of a date lets a stage go on. */
public final class StageOdds {
    private StageOdds() {}

    /** Empty when the stage asks nothing of the weather, or nothing is known of it. */
    public static Optional<SiteDayOdds> on(Stage stage, SiteSky sky, LocalDate date) {
        return Optional.ofNullable(stage.conditions())
                .flatMap(c -> sky.weather(date).map(day -> SiteDayOdds.on(day, conditions(c))))
                .filter(odds -> !odds.parts().isEmpty());
    }

    /** Whether the odds are not less than the stage demands; always when it demands none. */
    public static boolean suffice(Stage stage, SiteSky sky, LocalDate date) {
        var conditions = stage.conditions();
        Integer least = conditions == null ? null : conditions.leastOdds();
        return least == null
                || on(stage, sky, date).map(o -> o.odds() * 100 >= least).orElse(true);
    }

    /** Frozen ground is taken for a night of frost: cautious, since ground freezes later than air. */
    static Conditions conditions(org.firmset.homestead.Conditions written) {
        Conditions conditions = Conditions.ANY;
        if (written.dryDay()) {
            conditions = conditions.onlyDry();
        }
        if (written.coldestNight() != null) {
            conditions = conditions.lowOver(number(written.coldestNight()));
        }
        if (written.unfrozenGround()) {
            conditions = conditions.notFrozen();
        }
        if (written.hottestDay() != null) {
            conditions = conditions.highUnder(number(written.hottestDay()));
        }
        if (written.coldestDay() != null) {
            conditions = conditions.highOver(number(written.coldestDay()));
        }
        return written.mostWind() == null ? conditions : conditions.windUnder(number(written.mostWind()));
    }

    private static double number(Measured measured) {
        return measured.value().doubleValue();
    }
}
