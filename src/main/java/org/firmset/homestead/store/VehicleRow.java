package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import org.firmset.homestead.Vehicle;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Volume;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "vehicle")
class VehicleRow extends KeyedRow<Vehicle> {
    private String name;

    @Column(name = "gross_rating_kg")
    private Mass grossRating;

    @Column(name = "empty_mass_kg")
    private Mass emptyMass;

    @Column(name = "standing_kit_kg")
    private Mass standingKit;

    @Column(name = "bay_volume_m3")
    private Volume bayVolume;

    @Column(name = "longest_piece_m")
    private Length longestPiece;

    @Column(name = "tow_rating_kg")
    private @Nullable Mass towRating;

    @Column(name = "combination_rating_kg")
    private @Nullable Mass combinationRating;

    @Column(name = "tongue_rating_kg")
    private @Nullable Mass tongueRating;

    private @Nullable AxlesColumns axles;

    private @Nullable RackColumns roof;

    protected VehicleRow() {}

    VehicleRow(Slot slot, Vehicle record, Named named) {
        super(slot);
        become(record, named);
    }

    @Override
    void become(Vehicle record, Named named) {
        name = record.name();
        grossRating = record.grossRating();
        emptyMass = record.emptyMass();
        standingKit = record.standingKit();
        bayVolume = record.bayVolume();
        longestPiece = record.longestPiece();
        towRating = record.towRating();
        combinationRating = record.combinationRating();
        tongueRating = record.tongueRating();
        axles = AxlesColumns.of(record.axles());
        roof = RackColumns.of(record.roof());
    }

    @Override
    Vehicle toRecord() {
        return new Vehicle(
                key(),
                name,
                grossRating,
                emptyMass,
                standingKit,
                bayVolume,
                longestPiece,
                towRating,
                combinationRating,
                tongueRating,
                axles == null ? null : axles.toRecord(),
                roof == null ? null : roof.toRecord());
    }
}
