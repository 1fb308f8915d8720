package org.firmset.season.result;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.firmset.homestead.Hazard;
import org.firmset.homestead.WaitKind;
import org.firmset.homestead.file.Heading;
import org.firmset.measure.Described;
import org.firmset.measure.Hours;
import org.firmset.measure.Mass;
import org.firmset.measure.Measured;
import org.firmset.plan.RunKind;
import org.firmset.plan.Style;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** A season plan as it is shown, printed and written: everything by name, with units and in words. */
@Described("A season plan: which trip does which work, carries what, and why.")
public record SeasonReport(
        @Described("Name of the place.") String homestead,
        @Described("'Today' for this plan.") LocalDate statusDate,

        @Described("What makes one plan better than another.")
        Style style,

        @Described("Date on which the last subproject is finished; left out when nothing is planned.") @Nullable
        LocalDate finish,

        @Described("Trips that are made.") int tripCount,

        @Described("Runs with materials, deliveries included.")
        int runCount,

        @Described("What the plan costs.") Costs costs,

        @Described("Names of needed materials nobody names a price for; they are counted as free.")
        List<String> withoutPrice,

        @Described("What no plan can beat.") Best best,

        @Described("Subprojects, as listed by their owners.")
        List<Part> subprojects,

        @Described("All possible trips in order, made or not.")
        List<TripPart> trips,

        @Described("Stages, as listed by their owners.") List<StagePart> stages,
        @Described("Waits, as listed by their owners.") List<WaitPart> waits,

        @Described("For each subproject with work left the chain that sets its finish, the last to finish first.")
        List<PathPart> criticalPaths) {

    public static final Heading HEADING = new Heading("firmset-plan", 1);

    public SeasonReport {
        withoutPrice = List.copyOf(withoutPrice);
        subprojects = List.copyOf(subprojects);
        trips = List.copyOf(trips);
        stages = List.copyOf(stages);
        waits = List.copyOf(waits);
        criticalPaths = List.copyOf(criticalPaths);
    }

    /** The trips that are made, in order. */
    public List<TripPart> madeTrips() {
        return trips.stream().filter(t -> t.number() > 0).toList();
    }

    public Optional<StagePart> stage(String key) {
        return stages.stream().filter(s -> s.key().equals(key)).findFirst();
    }

    @Described("Money of a plan.")
    public record Costs(
            @Described("Trips.") Money trips,
            @Described("Extra runs.") Money extraRuns,
            @Described("Deliveries.") Money deliveries,
            @Described("Fuel of the generator.") Money generator,
            @Described("Materials still to buy.") Money materials,
            @Described("All of it.") Money total) {}

    @Described("What no plan can beat, proven.")
    public record Best(
            @Described("Fewest trips.") int trips,
            @Described("Least money.") Money money,

            @Described(
                    value =
                            "By how many percent any plan could be better, at most, at what matters most; 0 when none can.",
                    usual = "100")
            BigDecimal gapPercent) {
        public Best {
            gapPercent = Measured.normal(gapPercent);
        }

        /** Whether it is proven that no plan is better at what matters most. */
        public boolean proven() {
            return gapPercent.signum() == 0;
        }
    }

    @Described("A subproject in the plan.")
    public record Part(
            @Described("Key.") String key,
            @Described("Name.") String name,

            @Described("When its last stage is finished; left out when it has no stage.") @Nullable
            LocalDate finish,

            @Described("No plan finishes it sooner; left out when nothing is left to do.") @Nullable
            LocalDate notSooner,

            @Described("The date its owners hope for; left out for none.") @Nullable
            LocalDate target,

            @Described("Stages that are finished.") int stagesDone,
            @Described("Stages in all.") int stagesInAll) {}

    @Described("A possible trip.")
    public record TripPart(
            @Described("Key: its first date.") String key,

            @Described("Number among the trips that are made; 0 when it is not made.")
            int number,

            @Described("First date.") LocalDate firstDate,
            @Described("Last date.") LocalDate lastDate,
            @Described("Its days.") List<DayPart> days,
            @Described("Runs with materials.") List<RunPart> runs,

            @Described("Waits that ended since the trip before, in words.")
            List<String> ready,

            @Described("Lowest charge of the battery in percent of what may be used; left out without power.") @Nullable
            Integer batteryLowPercent,

            @Described("Water its work takes and where it comes from, in words.")
            List<String> water,

            @Described("What it costs, runs included.") Money cost) {
        public TripPart {
            days = List.copyOf(days);
            runs = List.copyOf(runs);
            ready = List.copyOf(ready);
            water = List.copyOf(water);
        }

        public boolean made() {
            return number > 0;
        }
    }

    @Described("A day of a trip.")
    public record DayPart(
            @Described("Date.") LocalDate date,
            @Described("How many people come.") int people,
            @Described("Labour that can be done.") Hours usable,

            @Described("Labour that is planned, extra runs included.")
            Hours used,

            @Described("Energy taken, in Wh.") int wattHours,
            @Described("Energy the generator gives, in Wh.") int generatorWattHours,
            @Described("Work in its order.") List<WorkPart> work) {
        public DayPart {
            work = List.copyOf(work);
        }
    }

    @Described("Work on one day.")
    public record WorkPart(
            @Described("Key of the stage.") String stage,
            @Described("Name of the stage.") String name,
            @Described("Name of its subproject.") String subproject,
            @Described("Labour.") Hours labour,

            @Described("Which of its blocks this is, from 1.")
            int block,

            @Described("How many blocks it has in this plan.")
            int blocks,

            @Described("Keys of the tools.") List<String> tools,
            @Described("What can hurt someone.") List<Hazard> hazards,

            @Described("Percent of such dates on which the weather lets it go on; left out when it asks nothing of it.")
            @Nullable
            Integer weatherPercent,

            @Described("Where power ends it for the day, how much is done and what is left; left out when it does not.")
            @Nullable
            String powerNote) {
        public WorkPart {
            tools = List.copyOf(tools);
            hazards = List.copyOf(hazards);
        }

        /** Whether the stage is finished by this block. */
        public boolean finishes() {
            return block == blocks;
        }
    }

    @Described("A run with materials.")
    public record RunPart(
            @Described("How it comes.") RunKind kind,
            @Described("Date.") LocalDate date,
            @Described("The vehicle, or who delivers.") String carrier,
            @Described("What it carries.") List<LoadPart> loads,
            @Described("Mass of all of it.") Mass mass,
            @Described("The limit that is nearest.") String nearestLimit,

            @Described("How much of that limit is used, in percent.")
            int usedPercent,

            @Described("Mass that limit counts.") Mass limitUsed,
            @Described("The limit itself.") Mass limit,

            @Described("What to know of it before it comes, in words.")
            List<String> notes) {
        public RunPart {
            loads = List.copyOf(loads);
            notes = List.copyOf(notes);
        }
    }

    @Described("Packs of one material in one place.")
    public record LoadPart(
            @Described("Key of the material.") String material,
            @Described("Name of the material.") String name,
            @Described("What a pack is.") String pack,
            @Described("How many packs.") int packs,
            @Described("Their mass.") Mass mass,
            @Described("Where they lie.") String place) {}

    /** How far a stage is. */
    public enum State {
        DONE,
        BEGUN,
        PINNED,
        PLANNED
    }

    @Described("A stage in the plan.")
    public record StagePart(
            @Described("Key.") String key,
            @Described("Name.") String name,
            @Described("Key of its subproject.") String subproject,
            @Described("How far it is.") State state,
            @Described("First work, done or planned.") LocalDate start,
            @Described("Last work, done or planned.") LocalDate finish,
            @Described("Labour still to do.") Hours labourLeft,

            @Described("Why it does not start one site day sooner, in words.")
            String whyNotSooner,

            @Described("Calendar days it can slip.") int slackDays,
            @Described("Trips it can slip.") int slackTrips,
            @Described("It is on a critical path.") boolean critical) {}

    @Described("A wait in the plan.")
    public record WaitPart(
            @Described("Key.") String key,
            @Described("Name.") String name,
            @Described("Why it is there.") WaitKind kind,
            @Described("Key of the stage before.") String from,
            @Described("Key of the stage after.") String to,
            @Described("When the stage before is finished.") LocalDate begins,
            @Described("When the stage after may start.") LocalDate ready,
            @Described("It is on a critical path.") boolean critical) {}

    @Described("The chain that sets a finish.")
    public record PathPart(
            @Described("Key of the subproject.") String subproject,

            @Described("The chain told in sentences, first link first.")
            List<String> story) {
        public PathPart {
            story = List.copyOf(story);
        }
    }
}
