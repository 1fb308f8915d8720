package org.firmset.plan.search;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.firmset.measure.Hours;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Layout;
import org.firmset.plan.Material;
import org.firmset.plan.Obstacle;
import org.firmset.plan.Reason;
import org.firmset.plan.Rule;
import org.firmset.plan.Shut;
import org.firmset.plan.SiteDay;
import org.firmset.plan.Stage;
import org.firmset.plan.Tool;

/** Finds what makes a plan impossible before one is sought, and names what stood in the way when none was found. */
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
            materials();
            order();
            longestWaits();
            allLabour();
        }
        return found;
    }

    private void prove(Rule rule, List<Integer> stages, String message, Object... arguments) {
        found.add(new Obstacle(
                rule,
                stages.stream().map(s -> model.stage(s).id()).toList(),
                true,
                String.format(Locale.ROOT, message, arguments)));
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

    private void materials() {
        for (int m = 0; m < model.problem.materials().size(); m++) {
            int material = m;
            List<Integer> users = IntStream.range(0, model.stageCount)
                    .filter(s -> !model.stage(s).finished())
                    .filter(s -> IntStream.of(model.needMaterial[s]).anyMatch(x -> x == material))
                    .boxed()
                    .toList();
            long needed = users.stream()
                    .flatMap(s -> model.stage(s).needs().stream())
                    .filter(n -> n.material().equals(model.material(material).id()))
                    .mapToLong(n -> n.packs())
                    .sum();
            if (needed > onSite(material) && !canCome(material)) {
                cannotCome(material, users);
            }
        }
    }

    private long onSite(int m) {
        return model.problem.site().stock().stream()
                .filter(l -> l.material().equals(model.material(m).id()))
                .mapToLong(l -> l.packs())
                .sum();
    }

    private boolean canCome(int m) {
        Supply supply = new Ledger(model).supply;
        for (int source = supply.lotCount(); source < supply.sourceEnd(); source++) {
            int bays = supply.isDelivery(source) ? 1 : supply.baysOf(source).length;
            for (int bay = 0; bay < bays; bay++) {
                if (supply.carries(source, bay, m) > 0) {
                    return true;
                }
            }
        }
        return false;
    }

    private void cannotCome(int m, List<Integer> users) {
        Material material = model.material(m);
        prove(
                Rule.RUNS,
                users,
                "%s (%,.0f kg, %.2f m3, %.1f m long) goes into no vehicle on any trip, and no supplier"
                        + " can bring it on an open date.%s Have it delivered, or use a smaller pack.",
                material.name(),
                material.grams() / 1000.0,
                material.millilitres() / 1e6,
                material.longestMillimetres() / 1000.0,
                whyNoTruck(material));
    }

    /** What keeps those away who sell it. */
    private String whyNoTruck(Material material) {
        StringBuilder why = new StringBuilder();
        for (DeliveryOffer offer : model.problem.offers()) {
            if (offer.materials().contains(material.id())) {
                if (offer.grams() < material.grams()) {
                    why.append(" A truck of ")
                            .append(offer.name())
                            .append(" may bring only ")
                            .append(String.format(Locale.ROOT, "%,.0f kg.", offer.grams() / 1000.0));
                }
                if (!offer.shutMonths().isEmpty()) {
                    why.append(" No truck of ")
                            .append(offer.name())
                            .append(" may come in ")
                            .append(offer.shutMonths().stream()
                                    .sorted()
                                    .map(m -> m.getDisplayName(TextStyle.FULL, Locale.ENGLISH))
                                    .collect(Collectors.joining(", ")))
                            .append('.');
                }
                if (material.dry() && !offer.attended()) {
                    why.append(" It must be kept dry, so somebody must be there to take it.");
                }
            }
        }
        return why.toString();
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

    /**
     * What stood in the way of the stages that found no place in the best draft.
     *
     * @param impossible whether it is proven that no plan has a place for all
     */
    List<Obstacle> unplaced(Draft draft, Builder builder, Genes genes, boolean impossible) {
        WhyNot whyNot = new WhyNot(draft, builder, genes);
        List<Obstacle> result = new ArrayList<>();
        for (int s : draft.unplaced) {
            boolean first = model.before.get(s).stream().allMatch(l -> draft.isSettled(l.from));
            if (first) {
                result.add(unplaced(s, draft, builder.earliest(s, draft), whyNot));
            }
        }
        if (impossible) {
            result.addFirst(new Obstacle(
                    result.getFirst().rule(),
                    result.stream().flatMap(o -> o.stages().stream()).toList(),
                    true,
                    Obstacle.SUMMARY));
        }
        return result;
    }

    private Obstacle unplaced(int s, Draft draft, int fromEpoch, WhyNot whyNot) {
        int from = model.dayFrom(fromEpoch);
        if (from >= model.dayCount()) {
            return tooLate(s, fromEpoch);
        }
        Map<Rule, Integer> held = new EnumMap<>(Rule.class);
        for (int day = from; day < model.dayCount(); day++) {
            held.merge(rule(whyNot.onDay(s, day)), 1, Integer::sum);
        }
        String counts = held.entrySet().stream()
                .sorted(Map.Entry.<Rule, Integer>comparingByValue().reversed())
                .map(e -> inWords(e.getKey()) + " on " + e.getValue())
                .collect(Collectors.joining(", "));
        Rule most = held.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(Rule.HOURS);
        String message = String.format(
                Locale.ROOT,
                "No plan was found in which %s is finished by the last open date %s. In the best one found, %d of %d"
                        + " stages have a place, and from %s on this one is kept out by: %s of %d site days. Add open"
                        + " dates or people, or leave stages for later.",
                name(s),
                model.days.getLast().date(),
                model.stageCount - draft.unplaced.size(),
                model.stageCount,
                LocalDate.ofEpochDay(fromEpoch),
                counts,
                model.dayCount() - from);
        return new Obstacle(most, List.of(model.stage(s).id()), false, message);
    }

    private Obstacle tooLate(int s, int fromEpoch) {
        String message = String.format(
                Locale.ROOT,
                "No plan was found in which %s is finished by the last open date %s. In the best one found it could"
                        + " start on %s at the soonest, because of what comes before it. Add open dates or people, or"
                        + " leave stages for later.",
                name(s),
                model.days.getLast().date(),
                LocalDate.ofEpochDay(fromEpoch));
        return new Obstacle(Rule.WAITS, List.of(model.stage(s).id()), false, message);
    }

    private static String inWords(Rule rule) {
        return switch (rule) {
            case LABOUR -> "what has begun";
            case WAITS -> "waits";
            case HOURS -> "hours";
            case CREW -> "too few people";
            case SHUT -> "season or weather";
            case POWER -> "power";
            case RUNS -> "vehicles";
            case SUPPLIES -> "materials that cannot be there";
            case PINNED -> "its pin";
            case TOOLS -> "tools in use";
            case MONEY -> "the limit to what is spent in a month";
        };
    }

    private static Rule rule(Reason reason) {
        return switch (reason) {
            case Reason.Waiting w -> Rule.WAITS;
            case Reason.Held h -> Rule.PINNED;
            case Reason.ShutThen s -> Rule.SHUT;
            case Reason.CrewShort c -> Rule.CREW;
            case Reason.PowerShort p -> Rule.POWER;
            case Reason.NotOnSite n -> Rule.SUPPLIES;
            case Reason.ToolTaken t -> Rule.TOOLS;
            case Reason.MoneyShort m -> Rule.MONEY;
            case Reason.Begun b -> Rule.LABOUR;
            case Reason.FirstSiteDay f -> Rule.HOURS;
            case Reason.HoursTaken h -> Rule.HOURS;
            case Reason.TripNotMade t -> Rule.HOURS;
            case Reason.NoGain n -> Rule.LABOUR;
        };
    }
}
