package org.firmset.trade.cure;

import java.util.List;
import java.util.Optional;
import org.firmset.measure.Temperature;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Term;
import org.firmset.trade.trace.Worksheet;
import org.jspecify.annotations.Nullable;

/** Whether the weather of a day lets one pour, and what it asks for. */
public final class PourWeather {
    private static final int MORTAR_HOURS = 24;
    private static final int GROUT_HOURS = 48;

    private PourWeather() {}

    /**
     * Holds a day's weather against the limits for fresh concrete or masonry.
     *
     * @throws Refusal when the high is under, or the low over, the temperature while placing, or a batch is mostly
     * water
     */
    public static Worksheet work(PourDay given) {
        PourCase day = PourCase.of(given);
        List<Reason> reasons = PourReasons.of(day);
        Sheet sheet = new Sheet().add(verdict(reasons)).add(mean(day));
        switch (given.work()) {
            case CONCRETE -> {
                ConcreteLines.of(day).forEach(sheet::add);
                rain(day).ifPresent(sheet::add);
                sheet.add(ConcreteLines.table(day)).add(ConcreteLines.curve(day));
            }
            case MASONRY -> masonry(day).forEach(sheet::add);
        }
        mixing(day).ifPresent(sheet::add);
        reasons.forEach(reason -> sheet.add(reason.finding()));
        PourFindings.of(day).forEach(sheet::add);
        return sheet.done();
    }

    private static Line verdict(List<Reason> reasons) {
        return Line.answer("verdict", "Whether to start", Amount.word(Reason.words(reasons)))
                .heed("Forecasts change: look again on the morning, and start nothing that cannot be finished");
    }

    private static Line mean(PourCase day) {
        return Line.step("daily-mean", "Daily mean of the air", Amount.temperature(day.mean()))
                .by(
                        "m = (h + l) / 2",
                        Term.term("h", "high of the day", Amount.temperature(day.high())),
                        Term.term("l", "low of the day and its night", Amount.temperature(day.low())));
    }

    private static Optional<Line> rain(PourCase day) {
        double hours = day.hoursLike(PourCase.SOFT_HOURS);
        if (Double.isInfinite(hours)) {
            return Optional.empty();
        }
        return Optional.of(
                Line.answer("rain-hours", "Hours after finishing until rain does no more harm", Amount.hours(hours))
                        .by(
                                "h = 8 f(20 °C) / f(T), 8 at least, with f = exp(13.65 - 4000 / (273 + T))",
                                Term.term("T", "temperature of the air", Amount.temperature(day.air())))
                        .from(Source.practice("the first 4 to 8 h"))
                        .heed("Carry sheet enough to cover the day's pour, whatever the forecast"));
    }

    private static List<Line> masonry(PourCase day) {
        return List.of(
                Line.answer(
                                "cold-band",
                                "Band of cold while working",
                                Amount.word(MasonryCold.of(day.air()).words()))
                        .from(Sources.MASONRY_COLD),
                Line.answer(
                                "cold-band-after",
                                "Band of cold afterwards, by the daily mean",
                                Amount.word(MasonryCold.of(day.mean()).words()))
                        .from(Sources.MASONRY_COLD),
                Line.answer("mortar-hours", "Hours to protect mortar in cold weather", Amount.hours(MORTAR_HOURS))
                        .from(Sources.MASONRY_AFTER),
                Line.answer("grout-hours", "Hours to protect core fill in cold weather", Amount.hours(GROUT_HOURS))
                        .from(Sources.MASONRY_AFTER));
    }

    private static Optional<Line> mixing(PourCase day) {
        @Nullable Temperature wanted = day.given().wantedTemperature();
        if (wanted == null) {
            return Optional.empty();
        }
        Batch batch = day.batch();
        return Optional.of(Line.answer(
                        "mixing-water",
                        "Mixing water that makes the concrete as warm as wanted",
                        Amount.temperature(batch.waterCelsius(wanted.amount())))
                .by(
                        "Tw = T + 0.22 S (T - Ts) / W",
                        Term.term("T", "temperature wanted", Amount.temperature(wanted.amount())),
                        Term.term("S", "aggregate and cement", Amount.mass(batch.solidsKilograms())),
                        Term.term("Ts", "their temperature", Amount.temperature(batch.solidsCelsius())),
                        Term.term("W", "mixing water", Amount.mass(batch.waterKilograms())))
                .from(Sources.HEAT_BALANCE)
                .heed("Measure the fresh concrete; the sum leaves out wet aggregate, the mixer and the air"));
    }
}
