package org.firmset.season;

import jakarta.annotation.PreDestroy;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.firmset.homestead.store.Changes;
import org.firmset.homestead.store.Homesteads;
import org.firmset.homestead.store.Kept;
import org.firmset.plan.Effort;
import org.firmset.plan.Former;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;
import org.firmset.season.ask.Against;
import org.firmset.season.ask.Answers;
import org.firmset.season.ask.Compared;
import org.firmset.season.ask.Comparing;
import org.firmset.season.ask.MorePower;
import org.firmset.season.ask.MorePowerFinder;
import org.firmset.season.ask.Moves;
import org.firmset.season.ask.Question;
import org.firmset.season.report.SeasonPlanner;
import org.firmset.season.result.PlannedHomestead;
import org.firmset.season.result.PlannedSeason;
import org.firmset.season.result.SeasonReport;
import org.firmset.season.store.KeptPlan;
import org.firmset.season.store.SeasonPlans;
import org.firmset.trade.takeoff.cutting.SolverLibrary;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.event.ContextClosedEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Service;

/**
 * Keeps the plan of each homestead in step with the homestead: after a change it is planned again in the background, and
 * whoever listens is told. Thread-safe.
 */
@Service
public class Seasons {
    private static final Logger LOG = LoggerFactory.getLogger(Seasons.class);
    private static final int LONGEST_GOODBYE_SECONDS = 10;
    /** Percent of the longer look that each of its two parts counts for. */
    private static final int SEARCHED = 45;

    /** Ends the listening. */
    @FunctionalInterface
    public interface Listening {
        void end();
    }

    private final Homesteads homesteads;
    private final SeasonPlans plans;
    private final Clock clock;
    private final PlannerSettings settings;
    private final SeasonPlanner planner = new SeasonPlanner();
    private final Map<UUID, Stop> running = new ConcurrentHashMap<>();
    private final Map<UUID, SeasonState> states = new ConcurrentHashMap<>();
    private final Map<UUID, List<Consumer<SeasonState>>> listeners = new ConcurrentHashMap<>();
    private final Map<UUID, Style> styles = new ConcurrentHashMap<>();
    private final Map<UUID, PlannedHomestead> latest = new ConcurrentHashMap<>();
    private final Map<UUID, PlannedSeason> earlier = new ConcurrentHashMap<>();
    private final Background planning = new Background("planning");
    /** Long looks apart from first plans: nobody shall wait for a first plan because another homestead is looked at long. */
    private final Background looking = new Background("looking");
    /** Once set nobody is told anything more: a page that is told reads from the database, which is about to go. */
    private volatile boolean ending;

    private final Answering answering = new Answering(latest::get);

    Seasons(Homesteads homesteads, SeasonPlans plans, Clock clock, PlannerSettings settings) {
        this.settings = settings;
        SolverLibrary.want(settings.solver());
        this.homesteads = homesteads;
        this.plans = plans;
        this.clock = clock;
    }

    /** Before anything else of the program ends. What was being looked for is looked for again at the next start. */
    @EventListener(ContextClosedEvent.class)
    void end() {
        ending = true;
        running.values().forEach(Stop::stop);
        planning.end();
        looking.end();
        answering.end();
    }

    /** Waits for what is under way to notice, before the database goes. */
    @PreDestroy
    void awaitTheEnd() throws InterruptedException {
        end();
        boolean over = planning.isOver(LONGEST_GOODBYE_SECONDS)
                && looking.isOver(LONGEST_GOODBYE_SECONDS)
                && answering.isOver(LONGEST_GOODBYE_SECONDS);
        if (!over) {
            LOG.info("A plan was still being made when the program ended; it is made again at the next start");
        }
    }

    public LocalDate today() {
        return LocalDate.now(clock);
    }

    /** The plan as it stands; when none was made today for the homestead as it is, one is begun. */
    public SeasonState state(UUID homestead) {
        SeasonState known = states.get(homestead);
        boolean stale = known == null
                || (known instanceof SeasonState.Planned planned
                        && !planned.report().statusDate().equals(today()));
        if (stale) {
            replan(homestead);
        }
        return states.getOrDefault(homestead, new SeasonState.Planning(null, 0));
    }

    /** The last plan that was made since the start, with all that it was made of; empty before the first. */
    public Optional<PlannedHomestead> latest(UUID homestead) {
        return Optional.ofNullable(latest.get(homestead));
    }

    public Style style(UUID homestead) {
        return styles.computeIfAbsent(
                homestead, id -> plans.latest(id).map(p -> p.report().style()).orElse(Style.SOONEST));
    }

    public void choose(UUID homestead, Style style) {
        styles.put(homestead, style);
        replan(homestead);
    }

    public Listening listen(UUID homestead, Consumer<SeasonState> listener) {
        List<Consumer<SeasonState>> all = listeners.computeIfAbsent(homestead, id -> new CopyOnWriteArrayList<>());
        all.add(listener);
        return () -> all.remove(listener);
    }

    @EventListener
    void homesteadChanged(Changes.HomesteadChanged event) {
        PlannedHomestead before = latest.get(event.homestead());
        if (before != null) {
            earlier.put(event.homestead(), before.season());
        }
        replan(event.homestead());
    }

    /** Ends the longer look; the plan that is shown stays, with the proof it has. */
    public void endLook(UUID homestead) {
        Stop look = running.get(homestead);
        if (look != null && states.get(homestead) instanceof SeasonState.Planned shown && !shown.last()) {
            look.stop();
            tell(
                    homestead,
                    new SeasonState.Planned(shown.report(), shown.homestead(), shown.moved(), true, shown.percent()));
        }
    }

    /**
     * Answers a question about the plan as it is shown, in the background. A new question ends the one before.
     *
     * @param answered is told the answer, in sentences, on another thread
     */
    public void ask(UUID homestead, Question question, Consumer<List<String>> answered) {
        answering.begin(
                homestead,
                (planned, stop) ->
                        Answers.to(question, planned.season(), Optional.ofNullable(earlier.get(homestead)), stop),
                List::of,
                answered);
    }

    /** Sets the plan as it is shown side by side with another, as a question is answered. */
    public void compare(UUID homestead, Against against, Consumer<Compared> answered) {
        answering.begin(
                homestead,
                (planned, stop) -> compared(homestead, against, planned.season(), stop),
                Compared.Nothing::new,
                answered);
    }

    /** Finds what more power would bring the plan as it is shown, as a question is answered. */
    public void morePower(UUID homestead, Consumer<MorePower> answered) {
        answering.begin(
                homestead,
                (planned, stop) -> MorePowerFinder.find(planned.homestead(), planned.season(), stop),
                MorePower.Nothing::new,
                answered);
    }

    private Compared compared(UUID id, Against against, PlannedSeason now, Stop stop) {
        return switch (against) {
            case Against.PlanBefore before -> {
                PlannedSeason known = earlier.get(id);
                yield known != null
                        ? Comparing.withBefore(now, known, stop)
                        : reportBefore(id)
                                .map(report -> Comparing.withBefore(now.report(), report))
                                .orElseGet(() -> new Compared.Nothing(
                                        "No plan before is known: nothing was changed since the first."));
            }
            case Against.Limited limited ->
                states.get(id) instanceof SeasonState.Planned shown
                        ? Comparing.withLimit(shown.homestead(), now, limited.limit(), stop)
                        : new Compared.Nothing(Answering.NOT_YET);
            case Against.OtherStyle other ->
                states.get(id) instanceof SeasonState.Planned shown
                        ? Comparing.withStyle(shown.homestead(), now, other.style(), formerBefore(id), stop)
                        : new Compared.Nothing(Answering.NOT_YET);
        };
    }

    /** The plan before the last change; what is stored outlasts a restart. */
    private Optional<SeasonReport> reportBefore(UUID id) {
        return Optional.ofNullable(earlier.get(id))
                .map(PlannedSeason::report)
                .or(() -> homesteads
                        .find(id)
                        .flatMap(kept -> plans.before(id, kept.version()))
                        .map(KeptPlan::report));
    }

    private List<Former> formerBefore(UUID id) {
        return reportBefore(id).map(Seasons::former).orElse(List.of());
    }

    /** Begins a new plan in the background. */
    public void replan(UUID homestead) {
        tell(homestead, new SeasonState.Planning(lastReport(homestead), 0));
        Stop stop = new Stop();
        Stop before = running.put(homestead, stop);
        if (before != null) {
            // what it looks for is out of date, and the new plan shall not wait for it
            before.stop();
        }
        if (ending) {
            stop.stop();
        }
        planning.begin(() -> plan(homestead, stop));
    }

    private @Nullable SeasonReport lastReport(UUID homestead) {
        SeasonState known = states.get(homestead);
        return known != null
                ? known.report()
                : plans.latest(homestead).map(KeptPlan::report).orElse(null);
    }

    private void plan(UUID id, Stop stop) {
        @Nullable SeasonReport before = lastReport(id);
        guarded(id, before, () -> {
            Optional<Kept> kept = homesteads.find(id);
            if (kept.isPresent() && !stop.isStopped()) {
                firstPlan(kept.get(), before, stop);
            }
        });
    }

    private void guarded(UUID id, @Nullable SeasonReport before, Runnable work) {
        try {
            work.run();
        } catch (RuntimeException e) {
            if (ending) {
                LOG.debug("Planning of homestead {} broke off as the program ended", id, e);
                return;
            }
            LOG.error("Planning of homestead {} failed", id, e);
            tell(
                    id,
                    new SeasonState.Failed(
                            before,
                            "No plan could be made by a mistake of the program (" + e.getMessage()
                                    + "). What is stored is safe. Change something and it is tried again; please report it."));
        }
    }

    /** A good plan soon; the plan of a longer look follows. */
    private void firstPlan(Kept kept, @Nullable SeasonReport before, Stop stop) {
        tell(kept, before, Effort.NORMAL, stop, SeasonState.Planned.class);
        looking.begin(() -> guarded(kept.id(), before, () -> longLook(kept, before, stop)));
    }

    private void tell(
            Kept kept,
            @Nullable SeasonReport before,
            Effort effort,
            Stop stop,
            Class<? extends SeasonState> worthTelling) {
        if (!stop.isStopped()) {
            SeasonState soon = planned(kept, before, effort, stop, false);
            if (!stop.isStopped() && worthTelling.isInstance(soon)) {
                tell(kept.id(), soon);
            }
        }
    }

    /** First more plans, then a proof: what is better is shown as it comes. */
    private void longLook(Kept kept, @Nullable SeasonReport before, Stop stop) {
        tell(kept, before, settings.searching(), stop, SeasonState.class);
        if (stop.isStopped()) {
            return;
        }
        SeasonState thorough = planned(kept, before, settings.proving(), stop, true);
        if (stop.isStopped()) {
            return;
        }
        if (thorough instanceof SeasonState.Planned planned && !planned.report().equals(before)) {
            plans.keep(kept.id(), kept.version(), planned.report());
        }
        tell(kept.id(), thorough);
    }

    private SeasonState planned(Kept kept, @Nullable SeasonReport before, Effort effort, Stop stop, boolean last) {
        SeasonPlanner.Result result = planner.plan(
                kept.homestead(),
                today(),
                style(kept.id()),
                former(kept.id(), before),
                effort,
                (built, of) -> progress(kept.id(), built, of, effort),
                stop);
        return switch (result) {
            case SeasonPlanner.Result.NoPlan noPlan -> new SeasonState.NoPlan(before, noPlan.obstacles());
            case SeasonPlanner.Result.Planned planned -> {
                SeasonReport report = planned.season().report();
                if (!stop.isStopped()) {
                    latest.put(kept.id(), new PlannedHomestead(kept.homestead(), planned.season()));
                }
                List<String> moved = before == null ? List.of() : Moves.between(before, report);
                yield new SeasonState.Planned(report, kept.homestead(), moved, last, percent(effort, 1, 1));
            }
        };
    }

    /** Only a style that keeps to the plan before needs to know it; all others depend on the homestead alone. */
    private List<Former> former(UUID id, @Nullable SeasonReport before) {
        return style(id) != Style.LEAST_CHANGE || before == null ? List.of() : former(before);
    }

    private static List<Former> former(SeasonReport before) {
        return before.stages().stream()
                .filter(s -> s.state() != SeasonReport.State.DONE)
                .map(s -> new Former(s.key(), s.start(), s.finish()))
                .toList();
    }

    /** Of the longer look the search is the first part; how far its proof is nobody can tell. */
    private static int percent(Effort effort, int built, int of) {
        return effort.equals(Effort.NORMAL) ? 0 : (effort.proof() > 0 ? SEARCHED : 0) + SEARCHED * built / of;
    }

    private void progress(UUID id, int built, int of, Effort effort) {
        int percent = 100 * built / of;
        boolean tenth = percent % 10 == 0 && 100 * (built - 1) / of != percent;
        if (!tenth) {
            return;
        }
        // what is shown already is not taken away for the longer look
        if (states.get(id) instanceof SeasonState.Planned shown) {
            int looked = percent(effort, built, of);
            if (looked > shown.percent() && !shown.last()) {
                tell(id, new SeasonState.Planned(shown.report(), shown.homestead(), shown.moved(), false, looked));
            }
        } else if (states.get(id) instanceof SeasonState.Planning) {
            tell(id, new SeasonState.Planning(lastReport(id), percent));
        }
    }

    private void tell(UUID id, SeasonState state) {
        states.put(id, state);
        if (!ending) {
            listeners.getOrDefault(id, List.of()).forEach(l -> l.accept(state));
        }
    }
}
