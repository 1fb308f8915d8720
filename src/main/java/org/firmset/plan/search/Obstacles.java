package org.firmset.plan.search;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.firmset.measure.Hours;
import org.firmset.plan.Layout;
import org.firmset.plan.Obstacle;
import org.firmset.plan.Rule;
import org.firmset.plan.Shut;
import org.firmset.plan.SiteDay;
import org.firmset.plan.Stage;
import org.firmset.plan.Tool;

/** Finds what makes a plan impossible before one is sought. */
final class Obstacles {
    private final Model model;
    private final Windows windows;
    private final List<Obstacle> found = new ArrayList<>();

    Obstacles(Model model, Windows windows) {
        this.model = model;
        this.windows = windows;
    }

    /** Everything that proves that there is no plan; empty when nothing does. */
    List<Obstacle> find() {
        circle();
        if (!found.isEmpty()) {
            return found;
        }
        for (int s = 0; s < model.stageCount; s++) {
            if (!model.stage(s).finished()) {
                alone(s);
            }
        }
        if (found.isEmpty()) {
            found.addAll(new MissingGoods(model).find());
            order();
            longestWaits();
            allLabour();
        }
        return found;
    }

    private void prove(Rule rule, List<Integer> stages, String message, Object... arguments) {
        found.add(proven(model, rule, stages, message, arguments));
    }

    static Obstacle proven(Model model, Rule rule, List<Integer> stages, String message, Object... arguments) {
        return new Obstacle(
                rule,
                stages.stream().map(s -> model.stage(s).id()).toList(),
                true,
                String.format(Locale.ROOT, message, arguments));
    }

    private void circle() {
        List<Integer> sorted = windows.order();
        if (sorted.size() == model.stageCount) {
            return;
        }
        boolean[] ordered = new boolean[model.stageCount];
        sorted.forEach(s -> ordered[s] = true);
        int s = IntStream.range(0, model.stageCount)
                .filter(x -> !ordered[x])
                .findFirst()
                .orElseThrow();
        List<Integer> walked = new ArrayList<>();
        while (!walked.contains(s)) {
            walked.add(s);
            s = model.before.get(s).stream()
                    .map(l -> l.from)
                    .filter(x -> !ordered[x])
                    .findFirst()
                    .orElseThrow();
        }
        List<Integer> circle =
                new ArrayList<>(walked.subList(walked.indexOf(s), walked.size()).reversed());
        circle.add(circle.getFirst());
        prove(
                Rule.WAITS,
                circle,
                "These stages wait for each other in a circle, so none can ever start: %s. Take out one of the waits"
                        + " between them.",
                circle.stream().map(this::name).collect(Collectors.joining(", then ")));
    }

    private String name(int s) {
        return model.stage(s).name();
    }

    private void alone(int s) {
        Stage stage = model.stage(s);
        List<SiteDay> days = model.days;
        int most = days.stream().mapToInt(SiteDay::people).max().orElse(0);
        if (days.isEmpty()) {
            prove(
                    Rule.HOURS,
                    List.of(s),
                    "%s has work left but there is no open date from %s on. Add open dates.",
                    name(s),
                    model.problem.statusDate());
        } else if (most < stage.crew()) {
            prove(
                    Rule.CREW,
                    List.of(s),
                    "%s needs %d people at once, but never more than %d come. Ask helpers for a"
                            + " date, or plan it with fewer.",
                    name(s),
                    stage.crew(),
                    most);
        } else if (!model.hasTools(s)) {
            missingTool(s);
        } else if (IntStream.range(0, days.size()).noneMatch(d -> model.allowed[s][d])) {
            neverAllowed(s);
        } else if (IntStream.range(0, days.size()).noneMatch(d -> windows.takesByHours(s, d) >= first(s))) {
            prove(
                    Rule.HOURS,
                    List.of(s),
                    "%s takes %s of labour on one day, but no day it may be done on has more than"
                            + " %s. Split it, or ask more people.",
                    name(s),
                    hours(first(s)),
                    hours(mostHours(s)));
        } else if (IntStream.range(0, days.size()).noneMatch(d -> windows.takes(s, d) >= first(s))) {
            prove(
                    Rule.POWER,
                    List.of(s),
                    "%s takes %,d Wh on one day, but on the days that have the hours for it the battery holds its floor"
                            + " for %s of it at most. Split it, or bring more power.",
                    name(s),
                    stage.wattHours(first(s)),
                    hours(mostByPower(s)));
        } else if (!canBeDivided(stage)) {
            prove(
                    Rule.LABOUR,
                    List.of(s),
                    "%s takes %s of labour, which cannot be divided into days of at least %s and at most %s. Change"
                            + " one of the three.",
                    name(s),
                    hours(stage.labourQuarters()),
                    hours(stage.effectiveLeastBlock()),
                    hours(stage.mostBlockQuarters()));
        } else if (windows.finishAloneByHours(s) == Windows.NONE) {
            prove(
                    Rule.HOURS,
                    List.of(s),
                    "%s takes %s of labour, but the days it may be done on do not hold that much,"
                            + " even with nothing else on them. Add open dates.",
                    name(s),
                    hours(stage.labourQuarters()));
        } else if (windows.finishAlone(s, 0) == Windows.NONE) {
            prove(
                    Rule.POWER,
                    List.of(s),
                    "%s takes %s of labour and %,d Wh for each hour of it: the days it may be done on hold the hours but"
                            + " not the power, even with nothing else on them. Add open dates, or bring more power.",
                    name(s),
                    hours(stage.labourQuarters()),
                    stage.wattHoursPerHour());
        }
    }

    /** In as few days as the most allows, each gets the largest share there can be. */
    private static boolean canBeDivided(Stage stage) {
        int fewestDays = Math.ceilDiv(stage.labourQuarters(), stage.mostBlockQuarters());
        return (long) fewestDays * stage.effectiveLeastBlock() <= stage.labourQuarters();
    }

    private int first(int s) {
        Stage stage = model.stage(s);
        return stage.layout() == Layout.IN_ONE_GO ? stage.labourQuarters() : stage.effectiveLeastBlock();
    }

    private int mostHours(int s) {
        return IntStream.range(0, model.dayCount())
                .filter(d -> model.allowed[s][d])
                .map(d -> Math.min(
                        model.stage(s).mostBlockQuarters(), model.days.get(d).quartersFor(model.stage(s))))
                .max()
                .orElse(0);
    }

    /** On the days that have the hours for it. */
    private int mostByPower(int s) {
        return IntStream.range(0, model.dayCount())
                .filter(d -> windows.takesByHours(s, d) >= first(s))
                .map(d -> model.alone.most(
                        s,
                        d,
                        Math.min(windows.takesByHours(s, d), model.stage(s).labourQuarters())))
                .max()
                .orElse(0);
    }

    private void missingTool(int s) {
        for (int u = 0; u < model.toolOf[s].length; u++) {
            Tool tool = model.problem.tools().get(model.toolOf[s][u]);
            if (model.toolCount[s][u] > tool.count()) {
                prove(
                        Rule.TOOLS,
                        List.of(s),
                        "%s needs %d of %s at once, but there are only %d. Get more, or plan it with fewer.",
                        name(s),
                        model.toolCount[s][u],
                        tool.name(),
                        tool.count());
            }
        }
    }

    private void neverAllowed(int s) {
        Stage stage = model.stage(s);
        boolean pinned = model.problem.pins().stream()
                .anyMatch(p -> p.stage().equals(stage.id())
                        && model.days.stream().noneMatch(d -> p.dates().contains(d.date())));
        if (pinned) {
            prove(
                    Rule.PINNED,
                    List.of(s),
                    "%s is pinned to dates of which none is an open date from %s on. Pin it to"
                            + " an open date, or take the pin out.",
                    name(s),
                    model.problem.statusDate());
            return;
        }
        boolean alwaysShut =
                model.days.stream().filter(d -> d.people() >= stage.crew()).allMatch(d -> stage.isShutOn(d.date()));
        String why = stage.shut().stream().map(Shut::why).distinct().collect(Collectors.joining("; "));
        if (alwaysShut) {
            prove(
                    Rule.SHUT,
                    List.of(s),
                    "%s may not be done on any open date on which %s (%s). Open other"
                            + " dates, or change what it needs.",
                    name(s),
                    stage.crew() == 1 ? "somebody comes" : stage.crew() + " people come",
                    why);
        } else {
            prove(
                    Rule.PINNED,
                    List.of(s),
                    "%s may not be done on any of its pinned dates. Pin it to another date, or" + " take the pin out.",
                    name(s));
        }
    }

    private static String hours(int quarters) {
        return new Hours(quarters).toString();
    }

    private void order() {
        for (int s : windows.order()) {
            if (windows.earliestFinishDay(s) == Windows.NONE && windows.earliestEpoch(s) == Link.NEVER) {
                prove(
                        Rule.WAITS,
                        List.of(s),
                        "%s can never start: one of the waits before it takes millions of years, or says nothing of the"
                                + " dates on which the stage before it can be finished. Change that wait.",
                        name(s));
            } else if (windows.earliestFinishDay(s) == Windows.NONE && windows.earliestEpoch(s) != Windows.NONE) {
                prove(
                        Rule.WAITS,
                        List.of(s),
                        "%s cannot be finished by the last open date %s: the stages and waits"
                                + " before it take until %s even with nothing else to do. Add open dates.",
                        name(s),
                        model.days.getLast().date(),
                        LocalDate.ofEpochDay(windows.earliestEpoch(s)));
            }
        }
    }

    private void longestWaits() {
        for (int s = 0; s < model.stageCount; s++) {
            boolean judged = !model.stage(s).finished() && model.stage(s).startedOn() == null;
            if (judged && windows.earliestFinishDay(s) != Windows.NONE) {
                for (Link link : model.before.get(s)) {
                    if (link.hasMost() && !windows.canStartInTime(link)) {
                        tooLate(s, link);
                    }
                }
            }
        }
    }

    private void tooLate(int s, Link link) {
        prove(
                Rule.WAITS,
                List.of(s, link.from),
                "%s must start at most %d days after %s is finished, but whenever that is, there is no open date in that"
                        + " time on which it may be done and all it waits for is over. Add open dates, or allow more"
                        + " days.",
                name(s),
                link.source.mostDays(),
                name(link.from));
    }

    private void allLabour() {
        long needed =
                model.problem.stages().stream().mapToLong(Stage::labourQuarters).sum();
        long there = model.days.stream().mapToLong(SiteDay::labourQuarters).sum();
        if (found.isEmpty() && needed > there) {
            List<Integer> all = IntStream.range(0, model.stageCount)
                    .filter(s -> !model.stage(s).finished())
                    .boxed()
                    .toList();
            prove(
                    Rule.HOURS,
                    all,
                    "All stages together take %,d hours of labour, but the open dates hold only %,d."
                            + " Add open dates or people, or leave stages for later.",
                    Math.ceilDiv(needed, 4),
                    there / 4);
        }
    }
}
