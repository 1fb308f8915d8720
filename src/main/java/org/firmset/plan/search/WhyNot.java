package org.firmset.plan.search;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.firmset.plan.Layout;
import org.firmset.plan.Pin;
import org.firmset.plan.Reason;
import org.firmset.plan.Shut;
import org.firmset.plan.Stage;

/** Says which rule keeps a stage from starting on a site day, everything else in the draft staying where it is. */
final class WhyNot {
    private final Model model;
    private final Draft draft;
    private final Builder builder;
    private final Genes genes;

    WhyNot(Draft draft, Builder builder, Genes genes) {
        this.model = draft.model;
        this.draft = draft;
        this.builder = builder;
        this.genes = genes;
    }

    /** Why a placed stage does not start one site day sooner. */
    Reason sooner(int s) {
        Stage stage = model.stage(s);
        LocalDate begun = stage.startedOn() != null ? stage.startedOn() : stage.finishedOn();
        if (begun != null) {
            return new Reason.Begun(begun);
        }
        return plannedSooner(s);
    }

    /** Why the planned part of a placed stage, begun or not, does not start one site day sooner. */
    Reason plannedSooner(int s) {
        Placement placement = draft.placement(s);
        int day = placement.startDay();
        if (day == 0) {
            return new Reason.FirstSiteDay(date(0));
        }
        builder.ledger().remove(placement);
        Reason reason = onDay(s, day - 1);
        builder.ledger().add(placement);
        return reason;
    }

    /** The ledger must not hold the stage. */
    Reason onDay(int s, int day) {
        return pinned(s, day)
                .or(() -> waiting(s, day))
                .or(() -> shut(s, day))
                .or(() -> crew(s, day))
                .or(() -> closed(day))
                .or(() -> tools(s, day))
                .or(() -> hours(s, day))
                .or(() -> power(s, day))
                .or(() -> supplies(s, day))
                .or(() -> money(s, day))
                .orElseGet(() -> new Reason.NoGain(date(day)));
    }

    private LocalDate date(int day) {
        return model.days.get(day).date();
    }

    private Optional<Reason> pinned(int s, int day) {
        return model.problem.pins().stream()
                .filter(p -> p.stage().equals(model.stage(s).id()) && !p.dates().contains(date(day)))
                .map(Pin::why)
                .<Reason>map(why -> new Reason.Held(date(day), why))
                .findFirst();
    }

    private Optional<Reason> waiting(int s, int day) {
        return model.before.get(s).stream()
                .filter(l -> draft.isSettled(l.from) && draft.readyEpoch(l) > model.dayEpoch[day])
                .max(Comparator.comparingInt(draft::readyEpoch))
                .map(l ->
                        new Reason.Waiting(l.source.id(), l.source.from(), LocalDate.ofEpochDay(draft.readyEpoch(l))));
    }

    private Optional<Reason> shut(int s, int day) {
        return model.stage(s).shut().stream()
                .filter(x -> x.covers(date(day)))
                .map(Shut::why)
                .<Reason>map(why -> new Reason.ShutThen(date(day), why))
                .findFirst();
    }

    private Optional<Reason> crew(int s, int day) {
        int present = model.days.get(day).people();
        int needed = model.stage(s).crew();
        return present < needed ? Optional.of(new Reason.CrewShort(date(day), present, needed)) : Optional.empty();
    }

    private Optional<Reason> closed(int day) {
        int trip = model.tripOfDay[day];
        boolean made = builder.ledger().tripIsMade(trip);
        return genes.closedTrip()[trip] && !made ? Optional.of(new Reason.TripNotMade(date(day))) : Optional.empty();
    }

    private Optional<Reason> tools(int s, int day) {
        int tool = builder.ledger().toolTaken(s, day);
        if (tool < 0) {
            return Optional.empty();
        }
        String id = model.problem.tools().get(tool).id();
        List<String> by = draft.placed().stream()
                .filter(p -> p.stage != s && p.blocks.stream().anyMatch(b -> b.day() == day))
                .map(p -> model.stage(p.stage))
                .filter(other -> other.tools().stream().anyMatch(u -> u.tool().equals(id)))
                .map(Stage::id)
                .toList();
        return Optional.of(new Reason.ToolTaken(date(day), id, by));
    }

    private Optional<Reason> money(int s, int day) {
        return builder.placer().canBePaid(s, new Block(day, firstBlock(s)), genes)
                ? Optional.empty()
                : Optional.of(new Reason.MoneyShort(date(day)));
    }

    /** The least that has to be done on the first day. */
    private int firstBlock(int s) {
        Stage stage = model.stage(s);
        return stage.layout() == Layout.IN_ONE_GO ? stage.labourQuarters() : stage.effectiveLeastBlock();
    }

    private Optional<Reason> hours(int s, int day) {
        int short1 = dayWithoutHours(s, day);
        if (short1 < 0) {
            return Optional.empty();
        }
        List<String> by = new ArrayList<>();
        for (Placement other : draft.placed()) {
            if (other.stage != s && other.blocks.stream().anyMatch(b -> b.day() == short1)) {
                by.add(model.stage(other.stage).id());
            }
        }
        return Optional.of(
                new Reason.HoursTaken(date(short1), Math.max(0, builder.ledger().quartersLeft(s, short1)), by));
    }

    /** The day whose hours do not suffice; -1 when they do. Unbroken days need hours on the days that follow as well. */
    private int dayWithoutHours(int s, int day) {
        Stage stage = model.stage(s);
        int left = stage.labourQuarters();
        int d = day;
        do {
            int room = d < model.dayCount() ? builder.ledger().quartersLeft(s, d) : 0;
            if (room < Math.min(left, firstBlock(s))) {
                return Math.min(d, model.dayCount() - 1);
            }
            left -= Math.min(room, stage.mostBlockQuarters());
            d++;
        } while (stage.layout() == Layout.UNBROKEN_DAYS && left > 0);
        return -1;
    }

    private Optional<Reason> power(int s, int day) {
        int first = firstBlock(s);
        return builder.ledger().lasts(s, day, first)
                ? Optional.empty()
                : Optional.of(new Reason.PowerShort(date(day), model.stage(s).wattHours(first)));
    }

    private Optional<Reason> supplies(int s, int day) {
        int missing = builder.placer().missingMaterial(s, new Block(day, firstBlock(s)), genes);
        return missing == Placer.ALL_THERE
                ? Optional.empty()
                : Optional.of(
                        new Reason.NotOnSite(date(day), model.material(missing).id()));
    }
}
