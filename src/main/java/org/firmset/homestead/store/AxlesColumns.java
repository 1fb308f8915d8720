package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import org.firmset.homestead.Axles;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.jspecify.annotations.Nullable;

@Embeddable
record AxlesColumns(
        @Column(name = "axles_wheelbase_m") Length wheelbase,
        @Column(name = "axles_front_rating_kg") Mass frontRating,
        @Column(name = "axles_rear_rating_kg") Mass rearRating,
        @Column(name = "axles_front_empty_kg") Mass frontEmpty,
        @Column(name = "axles_bay_front_m") Length bayFront,
        @Column(name = "axles_bay_length_m") Length bayLength,
        @Column(name = "axles_seats_m") Length seats,
        @Column(name = "axles_kit_m") Length kit,
        @Column(name = "axles_hitch_m") @Nullable Length hitch) {

    static @Nullable AxlesColumns of(@Nullable Axles axles) {
        return axles == null
                ? null
                : new AxlesColumns(
                        axles.wheelbase(),
                        axles.frontRating(),
                        axles.rearRating(),
                        axles.frontEmpty(),
                        axles.bayFront(),
                        axles.bayLength(),
                        axles.seats(),
                        axles.kit(),
                        axles.hitch());
    }

    Axles toRecord() {
        return new Axles(wheelbase, frontRating, rearRating, frontEmpty, bayFront, bayLength, seats, kit, hitch);
    }
}
