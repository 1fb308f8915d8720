package org.firmset.plan.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.firmset.plan.Rule;
import org.firmset.plan.Run;
import org.firmset.plan.RunKind;
import org.firmset.plan.SiteDay;
import org.firmset.plan.Stage;
import org.firmset.plan.Trip;
import org.firmset.plan.WorkBlock;

/** Rule 3: what a site day can take: its hours, its people, and the stages that are not shut on it. */
final class DayRules {
    private final Facts facts;
    private final Breaches breaches;

    DayRules(Facts facts, Breaches breaches) {
        this.facts = facts;
        this.breaches = breaches;
    }

    void check() {
        Map<LocalDate, Long> ofExtraRuns = labourOfExtraRuns();
        for (Trip trip : facts.problem().trips()) {
            trip.days().forEach(day -> hasTheHours(day, ofExtraRuns.getOrDefault(day.date(), 0L)));
            trip.days().forEach(this::hasTheLight);
            trip.days().forEach(this::hasThePeople);
        }
        facts.schedule().blocks().forEach(this::isNotShut);
    }

    private Map<LocalDate, Long> labourOfExtraRuns() {
        return facts.schedule().runs().stream()
                .filter(run -> run.kind() == RunKind.EXTRA)
                .collect(Collectors.groupingBy(Run::date, Collectors.summingLong(this::labourOf)));
    }

    private long labourOf(Run extra) {
        return facts.trip(extra.trip()).map(Trip::extraRunQuarters).orElse(0);
    }

    /** A negative block is a breach of its own and must not make room for another. */
    private void hasTheHours(SiteDay day, long ofExtraRuns) {
        long ofBlocks = facts.blocksOn(day.date()).stream()
                .mapToLong(WorkBlock::quarters)
                .filter(quarters -> quarters > 0)
                .sum();
        if (ofBlocks + ofExtraRuns > day.labourQuarters()) {
            breaches.add(
                    Rule.HOURS,
                    "%s has %s usable quarter-hours but its blocks take %s and its extra runs %s: %s",
                    day.date(),
                    day.labourQuarters(),
                    ofBlocks,
                    ofExtraRuns,
                    inWords(facts.blocksOn(day.date())));
        }
    }

    private void hasTheLight(SiteDay day) {
        List<WorkBlock> inLight = facts.blocksOn(day.date()).stream()
                .filter(b -> b.quarters() > 0)
                .filter(b -> facts.stage(b.stage()).map(Stage::needsLight).orElse(false))
                .toList();
        long taken = inLight.stream().mapToLong(WorkBlock::quarters).sum();
        // a day that is light throughout is judged by its hours
        if (taken > day.lightQuarters() && day.lightQuarters() < day.labourQuarters()) {
            breaches.add(
                    Rule.HOURS,
                    "%s has %s quarter-hours of daylight but stages that need it take %s: %s",
                    day.date(),
                    day.lightQuarters(),
                    taken,
                    inWords(inLight));
        }
    }

    private String inWords(List<WorkBlock> blocks) {
        return blocks.stream()
                .map(block -> "[%s] %s".formatted(nameOf(block), Integer.toString(block.quarters())))
                .collect(Collectors.joining(", "));
    }

    private String nameOf(WorkBlock block) {
        return facts.stage(block.stage()).map(Stage::name).orElse(block.stage());
    }

    private void hasThePeople(SiteDay day) {
        for (WorkBlock block : facts.blocksOn(day.date())) {
            facts.stage(block.stage())
                    .filter(stage -> stage.crew() > day.people())
                    .ifPresent(stage -> breaches.add(
                            Rule.CREW,
                            "Stage [%s] needs %s people on %s but only %s are on site",
                            stage.name(),
                            stage.crew(),
                            day.date(),
                            day.people()));
        }
    }

    private void isNotShut(WorkBlock block) {
        facts.stage(block.stage())
                .ifPresent(stage -> stage.shut().stream()
                        .filter(shut -> !block.date().isBefore(shut.from())
                                && !block.date().isAfter(shut.to()))
                        .forEach(shut -> breaches.add(
                                Rule.SHUT,
                                "Stage [%s] works on %s but is shut from %s to %s because %s",
                                stage.name(),
                                block.date(),
                                shut.from(),
                                shut.to(),
                                shut.why())));
    }
}
