package org.firmset.plan.check;

import static java.time.temporal.ChronoUnit.DAYS;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.firmset.plan.LeastWait;
import org.firmset.plan.Rule;
import org.firmset.plan.Stage;
import org.firmset.plan.Wait;
import org.firmset.plan.WorkBlock;

/** Rule 2: waits are over when the stage after works, and not longer than they may be. All in calendar days. */
final class WaitRules {
    private final Facts facts;
    private final Breaches breaches;

    WaitRules(Facts facts, Breaches breaches) {
        this.facts = facts;
        this.breaches = breaches;
    }

    void check() {
        for (Wait wait : facts.problem().waits()) {
            Stage before = facts.stage(wait.from()).orElseThrow();
            Stage after = facts.stage(wait.to()).orElseThrow();
            boolean planned = !facts.blocksOf(after.id()).isEmpty();
            if (planned && !after.finished()) {
                finishOf(before)
                        .ifPresentOrElse(
                                finish -> holds(new Link(wait, before, after, finish)), () -> neverEnds(before, after));
            }
        }
    }

    /** A wait with both its stages and the date on which it begins. */
    private record Link(Wait waiting, Stage before, Stage after, LocalDate finish) {}

    private Optional<LocalDate> finishOf(Stage stage) {
        List<WorkBlock> blocks = facts.blocksOf(stage.id());
        LocalDate recorded = stage.finishedOn();
        if (recorded != null) {
            return Optional.of(recorded);
        }
        return blocks.isEmpty()
                ? Optional.empty()
                : Optional.of(blocks.getLast().date());
    }

    private LocalDate firstBlockOf(Stage stage) {
        return facts.blocksOf(stage.id()).getFirst().date();
    }

    private void neverEnds(Stage before, Stage after) {
        breach(
                "Stage [%s] works on %s but stage [%s] before it has no block and is not finished",
                after.name(), firstBlockOf(after), before.name());
    }

    private void holds(Link link) {
        leastDays(link).ifPresentOrElse(least -> leastHolds(link, least), () -> leastIsNotKnown(link));
        if (link.waiting().hasMost() && !startedBeforeStatusDate(link.after())) {
            mostHolds(link);
        }
    }

    private static OptionalInt leastDays(Link link) {
        return switch (link.waiting().least()) {
            case LeastWait.Days fixed -> OptionalInt.of(fixed.days());
            case LeastWait.ByFinishDate table -> rowOf(table, link.finish());
        };
    }

    private static OptionalInt rowOf(LeastWait.ByFinishDate table, LocalDate finish) {
        long row = DAYS.between(table.first(), finish);
        return row >= 0 && row < table.days().size()
                ? OptionalInt.of(table.days().get((int) row))
                : OptionalInt.empty();
    }

    private void leastIsNotKnown(Link link) {
        breach(
                "Wait [%s] says nothing of a finish on %s, when stage [%s] finishes; stage [%s] works on %s",
                link.waiting().name(),
                link.finish(),
                link.before().name(),
                link.after().name(),
                firstBlockOf(link.after()));
    }

    /** The first block is the one to judge: when it is late enough, all are. */
    private void leastHolds(Link link, int least) {
        LocalDate works = firstBlockOf(link.after());
        long passed = DAYS.between(link.finish(), works);
        if (passed < least) {
            breach(
                    "Stage [%s] works on %s but stage [%s] finishes on %s and wait [%s] then takes %s days",
                    link.after().name(),
                    works,
                    link.before().name(),
                    link.finish(),
                    link.waiting().name(),
                    least);
        }
    }

    private boolean startedBeforeStatusDate(Stage stage) {
        LocalDate started = stage.startedOn();
        return started != null && started.isBefore(facts.problem().statusDate());
    }

    private void mostHolds(Link link) {
        LocalDate starts = startOf(link.after());
        long passed = DAYS.between(link.finish(), starts);
        if (passed > link.waiting().mostDays()) {
            breach(
                    "Stage [%s] starts on %s, %s days after stage [%s] finishes on %s, but wait [%s] may last only %s"
                            + " days",
                    link.after().name(),
                    starts,
                    passed,
                    link.before().name(),
                    link.finish(),
                    link.waiting().name(),
                    link.waiting().mostDays());
        }
    }

    private LocalDate startOf(Stage stage) {
        LocalDate first = firstBlockOf(stage);
        LocalDate recorded = stage.startedOn();
        return recorded != null && recorded.isBefore(first) ? recorded : first;
    }

    private void breach(String sentence, Object... parts) {
        breaches.add(Rule.WAITS, sentence, parts);
    }
}
