package org.firmset.homestead.file;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Material;
import org.firmset.homestead.Rack;
import org.firmset.measure.Length;
import org.firmset.measure.Measured;
import org.firmset.measure.Volume;
import org.jspecify.annotations.Nullable;

/**
 * A place in what is driven that takes cargo.
 *
 * @param most the most it bears when nobody is on board, in kilograms
 */
record CargoPlace(String name, Volume volume, Length longest, BigDecimal most) {

    /** Of the vehicle, its roof and the trailer, as far as they are there. */
    static List<CargoPlace> of(Homestead homestead) {
        List<CargoPlace> places = new ArrayList<>();
        homestead.driven().ifPresent(v -> {
            BigDecimal most = v.grossRating()
                    .value()
                    .subtract(v.emptyMass().value())
                    .subtract(v.standingKit().value());
            places.add(new CargoPlace(v.name(), v.bayVolume(), v.longestPiece(), most));
            @Nullable Rack roof = v.roof();
            if (roof != null) {
                places.add(new CargoPlace(
                        "roof of " + v.name(),
                        roof.volume(),
                        roof.longestPiece(),
                        roof.rating().value().min(most)));
            }
        });
        homestead
                .towed()
                .ifPresent(t -> places.add(new CargoPlace(
                        t.name(),
                        t.deckVolume(),
                        t.longestPiece(),
                        t.grossRating().value().subtract(t.emptyMass().value()))));
        return places;
    }

    /** Whether a pack goes in. */
    boolean hasRoomFor(Material material) {
        return isAtMost(material.volume(), volume) && (material.longest() == null || takesLength(material.longest()));
    }

    boolean takesLength(Length length) {
        return isAtMost(length, longest);
    }

    boolean bears(Material material) {
        return material.mass().value().compareTo(most) <= 0;
    }

    private static boolean isAtMost(Measured one, Measured other) {
        return one.value().compareTo(other.value()) <= 0;
    }
}
