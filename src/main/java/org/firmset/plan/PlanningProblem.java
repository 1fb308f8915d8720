package org.firmset.plan;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Everything a planner may know. References between its parts are by id and are checked here; the hard rules themselves
 * are in the {@linkplain org.firmset.plan package description}.
 *
 * @param statusDate 'today' for this plan
 * @param trips possible trips, ascending, not overlapping, none before the status date
 * @param waits links between stages; cycles are refused by the planner with an {@link Obstacle}, not here
 * @param spending what may be spent in a month; null for no limit
 * @param former where the plan before had the stages; a start for the search, and what {@link Style#LEAST_CHANGE} keeps to
 * @param odds of the weather, for stages that ask something of it; where nothing is said it is always fit,
 *     and what is said of stages or dates that are not there does not matter
 */
public record PlanningProblem(
        LocalDate statusDate,
        Style style,
        List<Trip> trips,
        List<Subproject> subprojects,
        List<Stage> stages,
        List<Wait> waits,
        List<Material> materials,
        List<DeliveryOffer> offers,
        Site site,
        List<Pin> pins,
        List<Tool> tools,
        @Nullable SpendingLimit spending,
        List<Former> former,
        List<WeatherOdds> odds) {

    public PlanningProblem {
        trips = List.copyOf(trips);
        subprojects = List.copyOf(subprojects);
        stages = List.copyOf(stages);
        waits = List.copyOf(waits);
        materials = List.copyOf(materials);
        offers = List.copyOf(offers);
        pins = List.copyOf(pins);
        tools = List.copyOf(tools);
        former = List.copyOf(former);
        odds = List.copyOf(odds);
        requireOrder(statusDate, trips);
        Set<String> subprojectIds = ids(subprojects, Subproject::id, "subproject");
        Set<String> stageIds = ids(stages, Stage::id, "stage");
        Set<String> materialIds = ids(materials, Material::id, "material");
        Set<String> toolIds = ids(tools, Tool::id, "tool");
        ids(trips, Trip::id, "trip");
        ids(waits, Wait::id, "wait");
        ids(offers, DeliveryOffer::id, "delivery offer");
        for (Stage stage : stages) {
            known(stage.subproject(), subprojectIds, "subproject", "stage", stage.id());
            stage.needs().forEach(n -> known(n.material(), materialIds, "material", "stage", stage.id()));
            ids(stage.needs(), Need::material, "need of stage " + stage.id());
            stage.tools().forEach(u -> known(u.tool(), toolIds, "tool", "stage", stage.id()));
            ids(stage.tools(), ToolUse::tool, "tool of stage " + stage.id());
        }
        for (Wait wait : waits) {
            known(wait.from(), stageIds, "from", "wait", wait.id());
            known(wait.to(), stageIds, "to", "wait", wait.id());
        }
        offers.forEach(o -> o.materials().forEach(m -> known(m, materialIds, "material", "delivery offer", o.id())));
        pins.forEach(p -> known(p.stage(), stageIds, "stage", "pin", p.why()));
        site.stock().forEach(l -> known(l.material(), materialIds, "material", "stock", l.arrivedOn()));
        former.forEach(f -> known(f.stage(), stageIds, "stage", "the plan before, from", f.start()));
        ids(former, Former::stage, "stage in the plan before");
    }

    /** A problem in which the weather is always fit. */
    public PlanningProblem(
            LocalDate statusDate,
            Style style,
            List<Trip> trips,
            List<Subproject> subprojects,
            List<Stage> stages,
            List<Wait> waits,
            List<Material> materials,
            List<DeliveryOffer> offers,
            Site site,
            List<Pin> pins,
            List<Tool> tools,
            @Nullable SpendingLimit spending,
            List<Former> former) {
        this(
                statusDate,
                style,
                trips,
                subprojects,
                stages,
                waits,
                materials,
                offers,
                site,
                pins,
                tools,
                spending,
                former,
                List.of());
    }

    /** The same in another style. */
    public PlanningProblem withStyle(Style changed) {
        return with(parts -> parts.style = changed);
    }

    /** The same with other trips. */
    public PlanningProblem withTrips(List<Trip> changed) {
        return with(parts -> parts.trips = changed);
    }

    /** The same with other stages. */
    public PlanningProblem withStages(List<Stage> changed) {
        return with(parts -> parts.stages = changed);
    }

    /** The same with other waits. */
    public PlanningProblem withWaits(List<Wait> changed) {
        return with(parts -> parts.waits = changed);
    }

    /** The same with other materials. */
    public PlanningProblem withMaterials(List<Material> changed) {
        return with(parts -> parts.materials = changed);
    }

    /** The same with other offers of suppliers. */
    public PlanningProblem withOffers(List<DeliveryOffer> changed) {
        return with(parts -> parts.offers = changed);
    }

    /** The same at another site. */
    public PlanningProblem withSite(Site changed) {
        return with(parts -> parts.site = changed);
    }

    /** The same with other pins. */
    public PlanningProblem withPins(List<Pin> changed) {
        return with(parts -> parts.pins = changed);
    }

    /** The same with other tools. */
    public PlanningProblem withTools(List<Tool> changed) {
        return with(parts -> parts.tools = changed);
    }

    /** The same with other limit to what is spent. */
    public PlanningProblem withSpending(@Nullable SpendingLimit changed) {
        return with(parts -> parts.spending = changed);
    }

    /** The same with other odds of the weather. */
    public PlanningProblem withOdds(List<WeatherOdds> changed) {
        return with(parts -> parts.odds = changed);
    }

    /** The same with other stages of a plan before. */
    public PlanningProblem withFormer(List<Former> changed) {
        return with(parts -> parts.former = changed);
    }

    private PlanningProblem with(Consumer<Parts> change) {
        Parts parts = new Parts(this);
        change.accept(parts);
        return parts.build();
    }

    /** The parts of a problem while it is rewritten. They may contradict each other until it is built. */
    public static final class Parts {
        public LocalDate statusDate;
        public Style style;
        public List<Trip> trips;
        public List<Subproject> subprojects;
        public List<Stage> stages;
        public List<Wait> waits;
        public List<Material> materials;
        public List<DeliveryOffer> offers;
        public Site site;
        public List<Pin> pins;
        public List<Tool> tools;
        public @Nullable SpendingLimit spending;
        public List<Former> former;
        public List<WeatherOdds> odds;

        public Parts(PlanningProblem of) {
            statusDate = of.statusDate;
            style = of.style;
            trips = of.trips;
            subprojects = of.subprojects;
            stages = of.stages;
            waits = of.waits;
            materials = of.materials;
            offers = of.offers;
            site = of.site;
            pins = of.pins;
            tools = of.tools;
            spending = of.spending;
            former = of.former;
            odds = of.odds;
        }

        /** @throws IllegalArgumentException when its parts contradict each other */
        public PlanningProblem build() {
            return new PlanningProblem(
                    statusDate,
                    style,
                    trips,
                    subprojects,
                    stages,
                    waits,
                    materials,
                    offers,
                    site,
                    pins,
                    tools,
                    spending,
                    former,
                    odds);
        }
    }

    private static void requireOrder(LocalDate statusDate, List<Trip> trips) {
        for (int i = 0; i < trips.size(); i++) {
            LocalDate from = trips.get(i).firstDate();
            Require.that(
                    !from.isBefore(statusDate),
                    "trip [%s] starts on [%s], before the status date [%s]",
                    trips.get(i).id(),
                    from,
                    statusDate);
            Require.that(
                    i == 0 || from.isAfter(trips.get(i - 1).lastDate()),
                    "trip [%s] starts on [%s] and must come after the trip before it",
                    trips.get(i).id(),
                    from);
        }
    }

    private static <T> Set<String> ids(List<T> parts, Function<T, String> id, String kind) {
        Set<String> seen = new HashSet<>();
        parts.forEach(p -> Require.that(seen.add(id.apply(p)), "%s [%s] is there twice", kind, id.apply(p)));
        return seen;
    }

    private static void known(String id, Set<String> known, String field, String kind, Object which) {
        Require.that(known.contains(id), "%s [%s] of %s [%s] is not known", field, id, kind, which);
    }
}
