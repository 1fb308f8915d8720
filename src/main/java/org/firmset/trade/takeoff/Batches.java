package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalTime;
import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.measure.Volume;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Whole;
import org.firmset.trade.trace.Worksheet;

@Described("How a pour goes batch by batch, so that no edge sets before the next batch meets it.")
public record Batches(
        @Described(value = "Bags of the whole pour.", least = "1", most = "2000")
        int bags,

        @Described(value = "Bags in a batch.", least = "1", most = "10", usual = "2")
        int bagsPerBatch,

        @Described(
                value = "Minutes from one batch to the next: load, mix, carry, place.",
                least = "2",
                most = "60",
                usual = "12")
        int minutesPerBatch,

        @Described(
                value = "Minutes after mixing in which a batch can still be joined and finished.",
                least = "10",
                most = "240",
                usual = "60")
        int workingMinutes,

        @Described(value = "What a bag makes.", least = "3 L", most = "60 L", usual = "0.6 ft3")
        Volume bagYield,

        @Described(value = "Thickness of the pour.", least = "40 mm", most = "1 m", usual = "4 in")
        Length thickness,

        @Described(value = "Width of the edge that advances.", least = "0.2 m", most = "30 m", usual = "1 m")
        Length front,

        @Described(value = "Hours to float and cover after the last batch.", least = "0", most = "12", usual = "1.5")
        BigDecimal finishHours,

        @Described(value = "Time of day of the first batch, such as 07:00.", usual = "07:00")
        LocalTime start,

        @Described(value = "Time of day when it must be covered, such as 19:30.", usual = "19:00")
        LocalTime dark) {

    public Worksheet work() {
        if (!dark.isAfter(start)) {
            throw new Refusal("dark", dark, "is not after the first batch", "Enter a time after " + start);
        }
        Sheet sheet = new Sheet();
        long batches = Math.ceilDiv(bags, bagsPerBatch);
        double hours = batches * minutesPerBatch / 60.0;
        sheet.add(Line.answer("batches", "Batches", Amount.count(batches, "batches"))
                .by(
                        "n = B / b, rounded up",
                        term("B", "bags", Amount.count(bags, "")),
                        term("b", "bags in a batch", Amount.count(bagsPerBatch, ""))));
        sheet.add(Line.answer("pouring", "From the first batch to the last", Amount.hours(hours))
                .by(
                        "T = n m",
                        term("n", "batches", Amount.count(batches, "")),
                        term("m", "minutes for one", Amount.minutes(minutesPerBatch))));
        addFront(sheet);
        addDay(sheet, hours);
        return sheet.done();
    }

    private void addFront(Sheet sheet) {
        long inTime = Whole.down(workingMinutes / (double) minutesPerBatch);
        double volume = inTime * bagsPerBatch * bagYield.amount();
        double advance = volume / (thickness.amount() * front.amount());
        sheet.add(Line.step("batches-in-time", "Batches while an edge stays fresh", Amount.count(inTime, "batches"))
                .by(
                        "k = w / m, rounded down",
                        term("w", "working time", Amount.minutes(workingMinutes)),
                        term("m", "minutes for one", Amount.minutes(minutesPerBatch)))
                .from(Source.practice("an hour at moderate temperature; about half of it in heat")));
        sheet.add(Line.answer("strip", "Come back to an edge after at most this length", Amount.length(advance))
                .by(
                        "a = k b y / (t f)",
                        term("k", "batches in time", Amount.count(inTime, "")),
                        term("b", "bags in a batch", Amount.count(bagsPerBatch, "")),
                        term("y", "yield of a bag", Amount.volume(bagYield.amount())),
                        term("t", "thickness", Amount.length(thickness)),
                        term("f", "width of the edge", Amount.length(front)))
                .heed("Pour in strips from one side; a narrower edge moves on faster."));
        if (inTime < 1) {
            sheet.add(
                    Finding.warning("One batch takes longer than it stays workable: every joint would be cold. Smaller"
                            + " batches, more hands or a slower mix."));
        }
    }

    private void addDay(Sheet sheet, double hours) {
        long minutes = Math.round((hours + finishHours.doubleValue()) * 60);
        long left = Duration.between(start, dark).toMinutes() - minutes;
        sheet.add(Line.answer("covered", "Covered at", Amount.word(clock(start, minutes)))
                .by(
                        "start + T + f",
                        term("T", "pouring", Amount.hours(hours)),
                        term("f", "floating and covering", Amount.hours(finishHours.doubleValue()))));
        long usable = Duration.between(start, dark).toMinutes() - Math.round(finishHours.doubleValue() * 60);
        long fits = Math.max(0, usable / minutesPerBatch) * bagsPerBatch;
        sheet.add(Line.step("bags-that-day", "Bags that fit into the day", Amount.count(Math.min(bags, fits), "bags"))
                .by("as many batches as end in time"));
        if (left < 0) {
            sheet.add(Finding.warning(
                    ("This ends %d min after %s: start earlier, take a helper, or divide it at a planned joint"
                                    + " with a key; %d of %d bags fit.")
                            .formatted(-left, dark, Math.min(bags, fits), bags)));
        } else if (left < 60) {
            sheet.add(Finding.warning(
                    "Less than an hour is left before %s: a broken mixer would leave a cold joint.".formatted(dark)));
        }
    }

    private static String clock(LocalTime start, long minutes) {
        long days = (start.toSecondOfDay() / 60 + minutes) / (24 * 60);
        return start.plusMinutes(minutes) + (days == 0 ? "" : " the next day");
    }
}
