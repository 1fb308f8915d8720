package org.firmset.trade.haul;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What every limit of a loaded outfit carries. Get one from {@link #of}. By moments about the axles (statics), exact to
 * a gram for the masses and places given; the scale decides. Thread-safe.
 *
 * @param limits every limit that is known; the first of those with the least left binds
 * @param tongue null without a trailer
 * @param frontEmptyGrams what the front axle carries when the vehicle is empty; null when axles are not known
 */
public record LoadSheet(
        List<LoadLimit> limits,
        @Nullable Tongue tongue,
        @Nullable Long frontEmptyGrams,
        List<LoadWarning> warnings) {
    /** Under this part of its empty mass the front axle counts as light. Common practice, no source. */
    public static final double LIGHT_FRONT = 0.95;

    public LoadSheet {
        limits = List.copyOf(limits);
        warnings = List.copyOf(warnings);
    }

    /** @throws IllegalArgumentException when cargo lies in a bay that the outfit does not have */
    public static LoadSheet of(Outfit outfit, List<Placed> cargo) {
        Balance balance = new Balance(outfit);
        Balance.Heap heap = balance.heap(cargo);
        double tongue = balance.tongue(heap);
        List<LoadLimit> limits = new ArrayList<>();
        long leastLeft = Long.MAX_VALUE;
        for (LimitKind kind : balance.kinds()) {
            LoadLimit limit =
                    new LoadLimit(kind, Grams.up(balance.on(kind, heap, tongue)), balance.rating(kind), false);
            leastLeft = Math.min(leastLeft, limit.leftGrams());
            limits.add(limit);
        }
        Tongue hitch = hitch(outfit, heap, tongue);
        VehicleAxles axles = outfit.vehicle().axles();
        Long frontEmpty = axles == null ? null : axles.frontEmptyGrams();
        return new LoadSheet(
                marked(limits, leastLeft), hitch, frontEmpty, warnings(limits, hitch, heap.deck() > 0, frontEmpty));
    }

    private static @Nullable Tongue hitch(Outfit outfit, Balance.Heap heap, double tongue) {
        HaulTrailer trailer = outfit.trailer();
        return trailer == null
                ? null
                : new Tongue(tongue, trailer.emptyGrams() + Math.round(heap.deck()), trailer.deck() != null);
    }

    private static List<LoadLimit> marked(List<LoadLimit> limits, long leastLeft) {
        List<LoadLimit> result = new ArrayList<>();
        boolean found = false;
        for (LoadLimit limit : limits) {
            boolean binds = !found && limit.leftGrams() == leastLeft;
            found |= binds;
            result.add(new LoadLimit(limit.kind(), limit.onItGrams(), limit.ratingGrams(), binds));
        }
        return result;
    }

    private static List<LoadWarning> warnings(
            List<LoadLimit> limits, @Nullable Tongue tongue, boolean deckLoaded, @Nullable Long frontEmpty) {
        List<LoadWarning> result = new ArrayList<>();
        for (LoadLimit limit : limits) {
            boolean front = limit.kind() == LimitKind.FRONT_AXLE;
            if (front && limit.onItGrams() < LIGHT_FRONT * Objects.requireNonNull(frontEmpty)) {
                result.add(new LoadWarning(LoadWarning.Kind.FRONT_LIGHT, frontEmpty - limit.onItGrams()));
            }
        }
        if (tongue != null && tongue.missingGrams() > 0) {
            result.add(new LoadWarning(LoadWarning.Kind.TONGUE_LIGHT, tongue.missingGrams()));
        }
        if (tongue != null && tongue.extraGrams() > 0) {
            result.add(new LoadWarning(LoadWarning.Kind.TONGUE_HEAVY, tongue.extraGrams()));
        }
        if (tongue != null && deckLoaded && !tongue.measured()) {
            result.add(new LoadWarning(LoadWarning.Kind.TONGUE_NOT_MEASURED, 0));
        }
        return result;
    }

    /** The limit with the least left. */
    public LoadLimit binding() {
        return limits.stream().filter(LoadLimit::binds).findFirst().orElseThrow();
    }

    /** Empty when that limit is not known. */
    public Optional<LoadLimit> limit(LimitKind kind) {
        return limits.stream().filter(l -> l.kind() == kind).findFirst();
    }

    /** Whether no rating is passed; what {@link #warnings} say comes on top. */
    public boolean holds() {
        return limits.stream().allMatch(l -> l.leftGrams() >= 0);
    }
}
