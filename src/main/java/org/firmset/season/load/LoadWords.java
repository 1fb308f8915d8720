package org.firmset.season.load;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Units;
import org.firmset.measure.Volume;
import org.firmset.season.result.SeasonReport;
import org.firmset.season.words.Dates;
import org.firmset.season.words.PackWords;
import org.firmset.season.words.WordTable;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.Excess;
import org.firmset.trade.haul.LimitKind;
import org.firmset.trade.haul.LoadLimit;
import org.firmset.trade.haul.LoadSheet;
import org.firmset.trade.haul.LoadWarning;
import org.firmset.trade.haul.Outfit;
import org.firmset.trade.haul.Packs;
import org.firmset.trade.haul.Restraint;
import org.firmset.trade.haul.Stowed;
import org.firmset.trade.haul.Tongue;
import org.firmset.trade.haul.Zone;

/** Says in plain words what a trip carries, for page and terminal alike. */
public final class LoadWords {
    private static final String HOW_TO_WEIGH =
            "Not known: the axles of %s. So only the payload%s held. A public scale tells them, each axle by itself: the"
                    + " front wheels alone, then the whole vehicle. Write them at the vehicle on Place and kit.";

    private final UnitSystem units;

    public LoadWords(UnitSystem units) {
        this.units = units;
    }

    /** What carries it and when. */
    public static String heading(SeasonReport.RunPart run) {
        return switch (run.kind()) {
            case ARRIVAL -> "With you on %s: %s".formatted(Dates.day(run.date()), run.carrier());
            case EXTRA -> "Extra run to the yard and back, %s: %s".formatted(Dates.day(run.date()), run.carrier());
            case DELIVERY -> "Delivered for %s: %s".formatted(Dates.day(run.date()), run.carrier());
        };
    }

    /** 4 cubic yards of Crushed rock. */
    public static String packs(SeasonReport.LoadPart load) {
        return PackWords.of(load.packs(), load.pack(), load.name());
    }

    /** Its mass and the limit with the least left, in a sentence. */
    public String summary(TripLoads.OwnRun run) {
        LoadLimit binding = run.placement().sheet().binding();
        String left =
                binding.overGrams() > 0 ? "over by " + mass(binding.overGrams()) : mass(binding.leftGrams()) + " left";
        return "%s of goods; the %s binds: %s of %s, %s."
                .formatted(
                        Units.show(run.about().mass(), units),
                        binding.kind().words(),
                        mass(binding.onItGrams()),
                        mass(binding.ratingGrams()),
                        left);
    }

    public String summary(TripLoads.BroughtRun run) {
        String when = run.broughtOn().isBefore(run.about().date())
                ? "It is dropped on " + Dates.date(run.broughtOn()) + ", with nobody there."
                : "Somebody must be there to take it.";
        return "%s of at most %s on its truck; bringing it costs %s. %s"
                .formatted(
                        Units.show(run.about().mass(), units),
                        Units.show(run.about().limit(), units),
                        SupplyWords.money(run.fees()),
                        when);
    }

    /** Empty without a trailer. */
    public Optional<String> tongue(LoadSheet sheet) {
        Tongue tongue = sheet.tongue();
        return tongue == null
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "On the hitch: %s, %.1f %% of the loaded trailer; 10 to 15 %% is usual.",
                        mass(Math.round(tongue.onHitchGrams())),
                        tongue.share() * 100));
    }

    /** Every limit that is known, what is on it and what is left. */
    public WordTable limits(LoadSheet sheet) {
        return new WordTable(
                "Limits",
                List.of("Limit", "On it", "Rating", "Left", "State"),
                sheet.limits().stream().map(this::limit).toList());
    }

    private List<String> limit(LoadLimit limit) {
        String state = limit.overGrams() > 0 ? "over" : limit.binds() ? "binds" : "holds";
        return List.of(
                SupplyWords.capital(limit.kind().words()),
                mass(limit.onItGrams()),
                mass(limit.ratingGrams()),
                mass(limit.leftGrams()),
                state);
    }

    /** What comes off in which order, where it lies and what holds it. */
    public WordTable items(TripLoads.OwnRun run) {
        return new WordTable(
                "What lies where, in the order it comes off",
                List.of("No.", "What", "Mass", "Where", "First used", "Held by"),
                run.items().stream().map(i -> item(i, run)).toList());
    }

    private List<String> item(TripLoads.Item item, TripLoads.OwnRun run) {
        Packs packs = item.cargo().packs();
        return List.of(
                Integer.toString(item.off()),
                PackWords.of(packs.count(), item.pack(), packs.name()),
                mass(packs.count() * packs.grams()),
                bay(run.outfit(), item.cargo().bay()) + ": "
                        + item.places().stream()
                                .map(s -> place(s, run, item.places().size() > 1))
                                .collect(Collectors.joining(", ")),
                item.use() == null
                        ? "no work planned uses it"
                        : "%s, %s"
                                .formatted(
                                        Dates.day(item.use().date()), item.use().stage()),
                held(item.restraint()));
    }

    /** Bed, roof or deck: the words of the drawings. */
    public static String bay(Outfit outfit, String id) {
        Bay bay = outfit.bay(id);
        if (bay.equals(outfit.vehicle().bay())) {
            return "bed";
        }
        return outfit.trailer() != null && bay.equals(outfit.trailer().bay()) ? "trailer" : "roof";
    }

    private static String place(Stowed stowed, TripLoads.OwnRun run, boolean counted) {
        List<Zone> zones = run.placement().zones().stream()
                .filter(z -> z.bay().equals(stowed.cargo().bay()))
                .toList();
        List<String> covered = zones.stream()
                .filter(z -> z.fromMillimetres() < stowed.from() + stowed.length()
                        && z.fromMillimetres() + z.lengthMillimetres() > stowed.from())
                .map(z -> zone(z.number(), zones.size()))
                .toList();
        String where = covered.size() == 1 ? covered.getFirst() : covered.getFirst() + " to " + covered.getLast();
        return (counted ? stowed.packs() + " " : "") + (zones.size() == 1 ? "all along" : where);
    }

    /** front, middle, rear; of four the middle ones by number. */
    public static String zone(int number, int of) {
        if (of == 1) {
            return "whole length";
        }
        if (number == 1) {
            return "front";
        }
        return number == of ? "rear" : of == 3 ? "middle" : number == 2 ? "second" : "third";
    }

    private String held(Restraint restraint) {
        List<String> parts = new ArrayList<>();
        parts.add((restraint.leastTies() == 1
                        ? "1 tie-down rated for "
                        : restraint.leastTies() + " tie-downs, together rated for ")
                + mass(restraint.tieRatingGrams()));
        if (restraint.cover()) {
            parts.add("cover tied over it");
        }
        if (restraint.upright()) {
            parts.add("strapped upright");
        }
        if (restraint.flag()) {
            parts.add(over(restraint) + ": flag it");
        }
        return String.join("; ", parts);
    }

    private String over(Restraint restraint) {
        List<String> parts = new ArrayList<>();
        if (restraint.overFront() > 0) {
            parts.add(length(restraint.overFront()) + " out in front");
        }
        if (restraint.overRear() > 0) {
            parts.add(length(restraint.overRear()) + " out behind");
        }
        return String.join(", ", parts);
    }

    /** What does not hold or wants a look, with what to do; empty when there is nothing. */
    public List<String> toMind(TripLoads.OwnRun run) {
        List<String> words = new ArrayList<>();
        run.placement().excesses().forEach(e -> words.add(excess(e)));
        LoadSheet sheet = run.placement().sheet();
        boolean deckLoaded = run.items().stream()
                .anyMatch(i -> bay(run.outfit(), i.cargo().bay()).equals("trailer"));
        sheet.warnings().stream()
                .filter(w -> deckLoaded || w.kind() == LoadWarning.Kind.FRONT_LIGHT)
                .forEach(w -> words.add(w.kind().words()));
        if (run.outfit().vehicle().axles() == null) {
            words.add(HOW_TO_WEIGH.formatted(
                    run.outfit().vehicle().name(),
                    run.outfit().trailer() == null ? " is" : " and what is known of the trailer are"));
        }
        return words;
    }

    private String excess(Excess excess) {
        String by = switch (excess.kind()) {
            case MASS, TONGUE_LIGHT, TONGUE_HEAVY -> mass(excess.by());
            case ROOM -> Units.show(new Volume(BigDecimal.valueOf(excess.by(), 6)), units);
            case LENGTH -> length(excess.by());
        };
        return "Over: %s %s %s. No placement that was tried holds it: leave something, or make another run."
                .formatted(excess.where(), excess.kind().words(), by);
    }

    /** How many runs of one's own, and whether fewer would do. */
    public static String fewest(TripLoads.Fewest fewest) {
        int planned = fewest.planned();
        if (planned == 0) {
            return "You carry nothing yourselves on this trip.";
        }
        if (planned == 1) {
            return "1 run of your own.";
        }
        if (fewest.least() == planned) {
            return planned + " runs; no way of loading needs fewer.";
        }
        return fewest.found() < planned
                ? "%d runs; by mass, room and length %d would do. Dry room, shelf life and money are what the plan looks at besides."
                        .formatted(planned, fewest.found())
                : "%d runs; fewer were not found, and none with fewer than %d is possible."
                        .formatted(planned, fewest.least());
    }

    /** A limit of an axle as its bar in the drawing tells it; empty when it is not known. */
    public Optional<String> bar(LoadSheet sheet, LimitKind kind) {
        return sheet.limit(kind)
                .map(l -> "%s of %s%s"
                        .formatted(
                                mass(l.onItGrams()),
                                mass(l.ratingGrams()),
                                l.overGrams() > 0 ? ", over" : l.binds() ? ", binds" : ""));
    }

    public String mass(long grams) {
        return Units.show(Mass.ofGrams(grams), units);
    }

    private String length(long millimetres) {
        return Units.show(new Length(BigDecimal.valueOf(millimetres, 3)), units);
    }
}
