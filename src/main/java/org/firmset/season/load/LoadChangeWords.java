package org.firmset.season.load;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Material;
import org.firmset.measure.Cash;
import org.firmset.measure.Hours;
import org.firmset.plan.Load;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.RunKind;
import org.firmset.plan.Schedule;
import org.firmset.plan.Stage;
import org.firmset.plan.Trip;
import org.firmset.plan.WorkBlock;
import org.firmset.season.problem.WaterWriter;
import org.firmset.season.words.Dates;
import org.firmset.season.words.PackWords;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.splitting.Unfit;

/** Says in plain words what a change on the day means for the loads and the work of a trip. */
final class LoadChangeWords {
    private final Homestead homestead;
    private final Schedule schedule;
    private final Trip trip;
    private final Map<String, Material> materials;
    private final Map<String, Stage> stages;

    LoadChangeWords(Homestead homestead, PlanningProblem problem, Schedule schedule, Trip trip) {
        this.homestead = homestead;
        this.schedule = schedule;
        this.trip = trip;
        materials =
                WaterWriter.materials(homestead).stream().collect(Collectors.toMap(Material::key, Function.identity()));
        stages = problem.stages().stream().collect(Collectors.toMap(Stage::id, Function.identity()));
    }

    /** @param withMore how far the work gets when the other runs are made as well */
    List<String> told(ChangedTrip changed, List<ChangedTrip.Reach> withMore) {
        List<String> words = new ArrayList<>();
        all(words, "Not to be had: ", changed.missing());
        for (int i = 0; i < changed.runs().size(); i++) {
            load(
                    words,
                    i == 0 ? "Goes in now" : "Goes with run " + (i + 1),
                    changed.runs().get(i));
        }
        for (List<Load> run : changed.another()) {
            load(words, "Takes another run", run);
            words.add(price());
        }
        all(words, "Stays behind: ", changed.stays());
        changed.unfit().forEach(unfit -> words.add(unfit(unfit)));
        changed.work().stream().filter(r -> !r.inFull()).forEach(r -> words.add(reach(r)));
        words.add(full(changed.work()));
        boolean all = isInFull(changed.work());
        if (!all && isInFull(withMore)) {
            words.add("With the other run the materials are there for all work of this trip.");
        }
        if (all && !isInFull(changed)) {
            words.add("What is short now is for later trips: plan these again once it is known.");
        }
        return words;
    }

    private static boolean isInFull(List<ChangedTrip.Reach> work) {
        return work.stream().allMatch(ChangedTrip.Reach::inFull);
    }

    private static boolean isInFull(ChangedTrip changed) {
        return changed.another().isEmpty()
                && changed.stays().isEmpty()
                && changed.missing().isEmpty()
                && changed.unfit().isEmpty();
    }

    private void all(List<String> words, String start, List<ChangedTrip.Packs> packs) {
        if (!packs.isEmpty()) {
            words.add(start + joined(packs.stream().map(p -> packs(p.packs(), p.material()))) + ".");
        }
    }

    private void load(List<String> words, String start, List<Load> run) {
        Map<String, List<Load>> byBay =
                run.stream().collect(Collectors.groupingBy(Load::bay, LinkedHashMap::new, Collectors.toList()));
        byBay.forEach((bay, loads) -> words.add("%s, %s: %s."
                .formatted(start, bayName(bay), joined(loads.stream().map(l -> packs(l.packs(), l.material()))))));
    }

    /** Names have commas in them. */
    private static String joined(Stream<String> parts) {
        return parts.collect(Collectors.joining("; "));
    }

    private String bayName(String id) {
        return trip.rig().bays().stream()
                .filter(b -> b.id().equals(id))
                .map(Bay::name)
                .findFirst()
                .orElse(id);
    }

    private String price() {
        int free = freeQuarters();
        return "The other run takes %s of %s, of which %s %s free in the plan, and costs %s."
                .formatted(
                        new Hours(trip.extraRunQuarters()),
                        Dates.day(trip.firstDate()),
                        new Hours(free),
                        free == 4 ? "is" : "are",
                        Cash.show(trip.extraRunCents(), homestead.currency()));
    }

    private int freeQuarters() {
        int work = schedule.blocks().stream()
                .filter(b -> b.date().equals(trip.firstDate()))
                .mapToInt(WorkBlock::quarters)
                .sum();
        long extra = schedule.runs().stream()
                .filter(r -> r.trip().equals(trip.id()) && r.kind() == RunKind.EXTRA)
                .count();
        int labour = trip.days().getFirst().labourQuarters();
        return Math.max(0, labour - work - Math.toIntExact(extra) * trip.extraRunQuarters());
    }

    private String unfit(Unfit unfit) {
        String why = switch (unfit.why()) {
            case TOO_LONG -> "too long for every place in it";
            case TOO_LARGE -> "too large for every place in it that is long enough";
            case TOO_HEAVY -> "too heavy for it";
        };
        return "No run of this vehicle can carry %s: %s."
                .formatted(packs(unfit.cargo().count(), unfit.cargo().kind()), why);
    }

    private String reach(ChangedTrip.Reach reach) {
        String what = name(reach.stage()) + " on " + Dates.day(reach.date());
        if (reach.waitsFor() != null) {
            return "%s cannot start: %s comes first and will not be finished.".formatted(what, name(reach.waitsFor()));
        }
        if (reach.lacks().isEmpty()) {
            return what + " cannot go on: its days have to follow each other without a gap.";
        }
        String lacks = joined(reach.lacks().stream().map(this::lack));
        String enough = "enough for %s of %s".formatted(reach.enough(), reach.planned());
        return reach.possible().isNone()
                ? "%s must not start: %s, %s%s.".formatted(what, lacks, enough, whyNot(reach))
                : "%s: %s, %s.".formatted(what, lacks, enough);
    }

    private String whyNot(ChangedTrip.Reach reach) {
        Stage stage = Objects.requireNonNull(stages.get(reach.stage()));
        if (reach.enough().isNone()) {
            return "";
        }
        return switch (stage.layout()) {
            case IN_ONE_GO -> ", and it has to be done in one go";
            case UNBROKEN_DAYS -> ", and its days have to follow each other without a gap";
            case SPLITTABLE -> ", less than is worth starting";
        };
    }

    private String lack(ChangedTrip.Lack lack) {
        return "%d of %s".formatted(lack.packs(), packs(lack.needed(), lack.material()));
    }

    private String full(List<ChangedTrip.Reach> work) {
        if (work.isEmpty()) {
            return "This trip has no work.";
        }
        if (isInFull(work)) {
            return "All work of this trip goes on in full.";
        }
        List<String> full = work.stream()
                .filter(ChangedTrip.Reach::inFull)
                .map(r -> name(r.stage()) + " on " + Dates.day(r.date()))
                .toList();
        return full.isEmpty()
                ? "Nothing of this trip's work goes on in full."
                : "Goes on in full: " + joined(full.stream()) + ".";
    }

    private String name(String stage) {
        Stage known = stages.get(stage);
        return known == null ? stage : known.name();
    }

    /** 18 bags of Concrete mix. */
    private String packs(int count, String id) {
        Material material = materials.get(id);
        return material == null ? count + " of " + id : PackWords.of(count, material.pack(), material.name());
    }
}
