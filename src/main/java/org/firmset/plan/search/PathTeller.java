package org.firmset.plan.search;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.firmset.plan.CriticalPath;
import org.firmset.plan.PathLink;
import org.firmset.plan.Reason;

/** Tells the chain that sets a subproject's finish, from its last stage back to where nothing holds it any more. */
final class PathTeller {
    private final Model model;
    private final Draft draft;
    private final WhyNot whyNot;
    private final int[] slackDays;

    PathTeller(Draft draft, WhyNot whyNot, int[] slackDays) {
        this.slackDays = slackDays;
        this.model = draft.model;
        this.draft = draft;
        this.whyNot = whyNot;
    }

    /** One path for each subproject with work left, the last to finish first. */
    List<CriticalPath> paths() {
        List<Integer> last = new ArrayList<>();
        for (int lane = 0; lane < model.laneIndex.size(); lane++) {
            lastStage(lane).ifPresent(last::add);
        }
        last.sort(Comparator.comparingInt((Integer s) -> draft.finishEpoch(s)).reversed());
        return last.stream().map(this::path).toList();
    }

    private Optional<Integer> lastStage(int lane) {
        return draft.placed().stream()
                .map(p -> p.stage)
                .filter(s -> model.laneOf[s] == lane)
                .max(Comparator.comparingInt(s -> draft.placement(s).finishDay()));
    }

    private CriticalPath path(int last) {
        Deque<PathLink> links = new ArrayDeque<>();
        Set<Integer> told = new HashSet<>();
        Optional<Integer> at = Optional.of(last);
        while (at.isPresent() && told.add(at.get())) {
            int s = at.get();
            links.addFirst(
                    new PathLink.Work(model.stage(s).id(), start(s), LocalDate.ofEpochDay(draft.finishEpoch(s))));
            at = model.stage(s).finished() ? Optional.empty() : before(s, links, told);
        }
        return new CriticalPath(
                model.problem.subprojects().get(model.laneOf[last]).id(), List.copyOf(links));
    }

    private LocalDate start(int s) {
        LocalDate finished = model.stage(s).finishedOn();
        if (finished == null) {
            return model.days.get(draft.placement(s).startDay()).date();
        }
        LocalDate begun = model.stage(s).startedOn();
        return begun == null ? finished : begun;
    }

    private Optional<Integer> before(int s, Deque<PathLink> links, Set<Integer> told) {
        Reason reason = whyNot.plannedSooner(s);
        if (reason instanceof Reason.HoursTaken taken) {
            Optional<Integer> holder = holder(taken, told);
            if (holder.isPresent()) {
                links.addFirst(new PathLink.Gap(taken.sooner(), start(s), reason));
                return holder;
            }
        }
        Optional<Link> link = model.before.get(s).stream().max(Comparator.comparingInt(draft::readyEpoch));
        LocalDate ready = link.map(l -> LocalDate.ofEpochDay(draft.readyEpoch(l)))
                .filter(d -> d.isAfter(model.problem.statusDate()))
                .orElse(model.problem.statusDate());
        if (ready.isBefore(start(s))) {
            links.addFirst(new PathLink.Gap(ready, start(s), reason));
        }
        link.ifPresent(l -> addWait(l, links));
        return link.map(l -> l.from);
    }

    private void addWait(Link link, Deque<PathLink> links) {
        LocalDate from = LocalDate.ofEpochDay(draft.finishEpoch(link.from));
        LocalDate to = LocalDate.ofEpochDay(draft.readyEpoch(link));
        if (to.isAfter(from)) {
            links.addFirst(new PathLink.Waiting(link.source.id(), from, to));
        }
    }

    /** Of the stages that take the hours the one that can slip least, and of those the one that began last. */
    private Optional<Integer> holder(Reason.HoursTaken taken, Set<Integer> told) {
        return taken.byStages().stream()
                .map(model.stageIndex::of)
                .filter(s -> !told.contains(s))
                .max(Comparator.comparingInt((Integer s) -> -slackDays[s])
                        .thenComparingInt(s -> draft.placement(s).startDay()));
    }
}
