package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import org.firmset.homestead.Rack;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Volume;
import org.jspecify.annotations.Nullable;

@Embeddable
record RackColumns(
        @Column(name = "roof_rating_kg") Mass rating,
        @Column(name = "roof_volume_m3") Volume volume,
        @Column(name = "roof_longest_piece_m") Length longestPiece,
        @Column(name = "roof_middle_m") @Nullable Length middle) {

    static @Nullable RackColumns of(@Nullable Rack rack) {
        return rack == null ? null : new RackColumns(rack.rating(), rack.volume(), rack.longestPiece(), rack.middle());
    }

    Rack toRecord() {
        return new Rack(rating, volume, longestPiece, middle);
    }
}
