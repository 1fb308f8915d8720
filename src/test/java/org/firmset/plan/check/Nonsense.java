package org.firmset.plan.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.firmset.plan.GeneratorUse;
import org.firmset.plan.Load;
import org.firmset.plan.Run;
import org.firmset.plan.RunKind;
import org.firmset.plan.Schedule;
import org.firmset.plan.WorkBlock;

/** Makes schedules of ids, dates and numbers thrown together, the worst that can be written down among them. */
final class Nonsense {
    private static final List<String> IDS = List.of(
            "may", "june", "dig", "slab", "walls", "cement", "timber", "mill", "bed", "truck", "nobody", "", "%s %d %");
    private static final List<Integer> COUNTS =
            List.of(Integer.MIN_VALUE, -1, 0, 1, 5, 24, 48, 1_000, Integer.MAX_VALUE);

    private final Random random;

    Nonsense(Random random) {
        this.random = random;
    }

    Schedule schedule() {
        return new Schedule(some(this::block), some(this::run), some(this::generatorUse));
    }

    private <T> List<T> some(Supplier<T> part) {
        return Stream.generate(part).limit(random.nextInt(12)).toList();
    }

    private <T> T oneOf(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    private LocalDate date() {
        return switch (random.nextInt(10)) {
            case 0 -> LocalDate.MIN;
            case 1 -> LocalDate.MAX;
            case 2, 3, 4 -> LocalDate.parse("2027-06-05").plusDays(random.nextInt(2));
            default -> LocalDate.parse("2027-04-30").plusDays(random.nextInt(4));
        };
    }

    private WorkBlock block() {
        return new WorkBlock(oneOf(IDS), date(), oneOf(COUNTS));
    }

    private Run run() {
        return new Run(oneOf(IDS), date(), oneOf(List.of(RunKind.values())), oneOf(IDS), some(this::load));
    }

    private Load load() {
        return new Load(oneOf(IDS), oneOf(IDS), oneOf(COUNTS));
    }

    private GeneratorUse generatorUse() {
        return new GeneratorUse(date(), oneOf(List.of(Long.MIN_VALUE, -1L, 0L, 100L, Long.MAX_VALUE)));
    }
}
