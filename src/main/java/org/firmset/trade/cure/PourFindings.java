package org.firmset.trade.cure;

import java.util.ArrayList;
import java.util.List;
import org.firmset.measure.Temperature;
import org.firmset.trade.trace.Finding;
import org.jspecify.annotations.Nullable;

/** What one ought to know about a day's weather besides the reasons against it. */
final class PourFindings {
    /** In degrees Celsius; common practice, no source. */
    private static final double HOT_FOR_PEOPLE = 32;

    /** Hotter water may set cement at once, in degrees Celsius (140 °F; ACI 306R, from memory). */
    private static final double HOT_WATER = 60;

    private static final double BOILING = 100;

    private final PourCase day;
    private final List<Finding> found = new ArrayList<>();

    private PourFindings(PourCase day) {
        this.day = day;
    }

    static List<Finding> of(PourCase day) {
        PourFindings findings = new PourFindings(day);
        switch (day.given().work()) {
            case CONCRETE -> findings.concrete();
            case MASONRY -> findings.note("Cover the tops of walls each night, about 0.6 m (2 ft) down the sides.");
        }
        if (ColdWeather.isSpell(day.coldDays())) {
            findings.note("By its older definition this is cold weather: more than three days in a row with a mean"
                    + " under 4.4 °C (40 °F). It ends when half of a day is over 10 °C (50 °F).");
        }
        if (day.given().rainHours() == null) {
            findings.note("No rain is reckoned with; carry sheet for the whole of the day's work all the same.");
        }
        findings.assumed();
        findings.people();
        findings.mixing();
        findings.note("Limits of specifications in short; the project's own, the bag and local code come first.");
        return List.copyOf(findings.found);
    }

    private void note(String text) {
        found.add(Finding.note(text));
    }

    private void warning(String text) {
        found.add(Finding.warning(text));
    }

    private void concrete() {
        if (!Evaporation.inChart(day.concrete(), day.air(), day.windKmh())) {
            warning("Evaporation is stretched beyond what its formula was made for: 4 to 38 °C (40 to 100 °F) and wind"
                    + " up to 40 km/h (25 mph).");
        }
        if (HotWeather.isHot(day.air(), day.evaporation())) {
            warning("Hot weather as ACI 305.1 has it: 27 °C (80 °F) or more and evaporation over the limit. Concrete"
                    + " sets fast: have hands, water and shade ready before the first batch.");
        }
        if (day.mean() < 0) {
            warning("At a daily mean under 0 °C (32 °F) concrete gains nothing unless it is kept warm.");
        }
    }

    /** What was not given and so was taken for granted. */
    private void assumed() {
        if (day.given().airLow() == null && day.given().nightLow() == null) {
            warning(
                    "No night temperature is given: the nights are taken to be as warm as the air while placing. Look up the"
                            + " lows of the day and of the nights after it, and enter them, before you go.");
        }
        if (day.given().concreteTemperature() == null) {
            note("The temperature of the fresh concrete is not given: it is taken to be that of the air.");
        }
    }

    private void people() {
        if (day.high() >= HOT_FOR_PEOPLE) {
            warning(
                    "Hot for people too: start early, shade and water for everybody, stop at the first sign of dizziness.");
        }
    }

    private void mixing() {
        @Nullable Temperature wanted = day.given().wantedTemperature();
        if (wanted == null) {
            return;
        }
        Batch batch = day.batch();
        double water = batch.waterCelsius(wanted.amount());
        if (water > HOT_WATER) {
            warning("Water over 60 °C (140 °F) scalds and may set the cement at once: mix it with the aggregate before"
                    + " the cement goes in.");
        }
        if (water > BOILING) {
            warning("No water is that hot; with boiling water the concrete would have %s. Warm the aggregate."
                    .formatted(Words.celsius(batch.concreteCelsius(BOILING))));
        }
        if (water < 0) {
            warning("No water is that cold; with ice-cold water the concrete would have %s. Cool the aggregate."
                    .formatted(Words.celsius(batch.concreteCelsius(0))));
        }
        if (batch.solidsCelsius() < 0) {
            warning("Ice in the aggregate takes far more heat than this sum has: thaw it first.");
        }
    }
}
