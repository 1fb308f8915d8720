package org.firmset.season.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.firmset.homestead.Cautions;
import org.firmset.homestead.Hazard;
import org.firmset.measure.Cash;
import org.firmset.season.words.Dates;
import org.firmset.season.words.WordTable;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** Says in words what more power would bring: for pages and the terminal alike. */
public final class MorePowerWords {
    private MorePowerWords() {}

    /** What there is to say before the table; at least one sentence. */
    public static List<String> sentences(MorePower answer) {
        return switch (answer) {
            case MorePower.Nothing nothing -> List.of(nothing.why());
            case MorePower.NotLimiting not -> notLimiting(not);
            case MorePower.Limiting limiting -> limiting(limiting);
        };
    }

    private static List<String> notLimiting(MorePower.NotLimiting not) {
        if (not.foundAgain()) {
            return List.of(
                    "Power is not what limits the season: planned again with the power there is, a better plan was"
                            + " found than the one that is shown, and none better if work drew nothing. Let it be planned anew.");
        }
        return List.of(
                ("Power is not what limits the season: planned again as if work drew nothing, no plan was found that"
                                + " is better in the style '%s'%s.")
                        .formatted(not.style(), not.proven() ? "; that there is none is proven" : ""));
    }

    private static List<String> limiting(MorePower.Limiting limiting) {
        String currency = limiting.currency();
        List<String> sentences = new ArrayList<>();
        sentences.add("If power never ran short: " + String.join("; ", gains(limiting.unlimited(), currency)) + ".");
        if (limiting.foundAgain()) {
            sentences.add(
                    "Planned again with the power there is, a better plan was found than the one that is shown. What is"
                            + " told here is counted from that one.");
        }
        limiting.ways().stream().map(MorePowerWords::sentence).forEach(sentences::add);
        return sentences;
    }

    private static String sentence(MorePower.Way way) {
        return switch (way) {
            case MorePower.Way.Useless useless ->
                capital(amount(useless.kind(), useless.upTo())) + " would bring nothing alone.";
            case MorePower.Way.Found found ->
                found.enough()
                        ? capital(amount(found.kind(), found.amount())) + " would bring the same."
                        : "%s would bring a part of it; no more than that part was found with more alone."
                                .formatted(capital(amount(found.kind(), found.amount())));
        };
    }

    /** One row for each kind that brings something. */
    public static WordTable table(MorePower.Limiting limiting) {
        return new WordTable(
                "What would bring it, each alone",
                List.of("More power", "What it costs", "Finishes", "Trips", "Trips and hauling", "Done in one trip"),
                limiting.ways().stream()
                        .filter(MorePower.Way.Found.class::isInstance)
                        .map(MorePower.Way.Found.class::cast)
                        .map(found -> row(found, limiting.currency()))
                        .toList());
    }

    private static List<String> row(MorePower.Way.Found found, String currency) {
        MorePower.Gain gain = found.gain();
        return List.of(
                capital(amount(found.kind(), found.amount())),
                cost(found.kind(), found.cost()),
                orNone(gain.finishes().stream()
                        .map(f -> "%s %s, not %s".formatted(f.subproject(), Dates.day(f.then()), Dates.day(f.now())))
                        .collect(Collectors.joining("; "))),
                gain.trips() == 0 ? "as many" : trips(gain.trips()),
                gain.haulingCents() == 0 ? "the same" : money(gain.haulingCents(), currency),
                orNone(String.join(", ", gain.whole())));
    }

    /** How it was found, and what to mind; below the table. */
    public static List<String> notes(MorePower.Limiting limiting) {
        List<String> notes = new ArrayList<>();
        notes.add(
                ("The least amounts in steps of %d Wh, %d W and whole hours, found by planning again with a shorter look;"
                                + " each plan was checked. A longer look may find that less is enough.")
                        .formatted(PowerLadder.BATTERY_STEP, PowerLadder.PANEL_STEP));
        if (limiting.ways().stream().anyMatch(w -> w instanceof MorePower.Way.Found f && f.cost() == null)) {
            notes.add("Prices of more battery and panels are written on Place and kit, under power.");
        }
        notes.add("Charger, inverter, fuses and cables must suit what is added. " + String.join(" ", cautions(limiting))
                + " " + Cautions.STANDING);
        return notes;
    }

    private static List<String> cautions(MorePower.Limiting limiting) {
        List<Hazard> hazards = new ArrayList<>(List.of(Hazard.BATTERY, Hazard.TEMPORARY_POWER));
        if (limiting.ways().stream().anyMatch(w -> w.kind() == MorePower.Kind.GENERATOR)) {
            hazards.add(Hazard.GENERATOR);
        }
        return Cautions.of(hazards);
    }

    private static List<String> gains(MorePower.Gain gain, String currency) {
        List<String> parts = new ArrayList<>();
        gain.finishes()
                .forEach(f -> parts.add("%s would be finished on %s instead of %s"
                        .formatted(f.subproject(), Dates.date(f.then()), Dates.date(f.now()))));
        if (gain.trips() != 0) {
            parts.add("the season would take " + trips(gain.trips()));
        }
        if (gain.haulingCents() != 0) {
            parts.add("trips and hauling would cost " + money(gain.haulingCents(), currency));
        }
        if (gain.fuelCents() != 0) {
            parts.add("fuel of the generator would cost " + money(gain.fuelCents(), currency));
        }
        gain.whole().forEach(s -> parts.add("'" + s + "' would be done in one trip"));
        return parts;
    }

    private static String trips(int fewer) {
        int count = Math.abs(fewer);
        return "%d %s %s".formatted(count, count == 1 ? "trip" : "trips", fewer > 0 ? "fewer" : "more");
    }

    private static String money(long lessCents, String currency) {
        return Cash.show(Math.abs(lessCents), currency) + (lessCents > 0 ? " less" : " more");
    }

    private static String cost(MorePower.Kind kind, @Nullable Money cost) {
        if (cost == null) {
            return "no price is written down";
        }
        String shown = Cash.show(Cash.cents(cost), cost.getCurrency().getCurrencyCode());
        return kind == MorePower.Kind.GENERATOR ? shown + " more fuel" : shown;
    }

    private static String amount(MorePower.Kind kind, int amount) {
        return switch (kind) {
            case BATTERY -> "%,d Wh more battery".formatted(amount);
            case PANELS -> "%,d W more panels".formatted(amount);
            case GENERATOR -> "the generator up to %d h a day".formatted(amount);
        };
    }

    private static String orNone(String text) {
        return text.isEmpty() ? WordTable.NONE : text;
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
