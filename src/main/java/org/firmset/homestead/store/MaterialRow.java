package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import org.firmset.homestead.Material;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Volume;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "material")
class MaterialRow extends KeyedRow<Material> {
    private String name;
    private String pack;

    @Column(name = "pack_mass_kg")
    private Mass mass;

    @Column(name = "pack_volume_m3")
    private Volume volume;

    @Column(name = "pack_longest_m")
    private @Nullable Length longest;

    @Column(name = "keep_dry")
    private boolean dry;

    private boolean upright;

    private @Nullable Integer shelfLifeDays;

    protected MaterialRow() {}

    MaterialRow(Slot slot, Material record, Named named) {
        super(slot);
        become(record, named);
    }

    @Override
    void become(Material record, Named named) {
        name = record.name();
        pack = record.pack();
        mass = record.mass();
        volume = record.volume();
        longest = record.longest();
        dry = record.dry();
        upright = record.upright();
        shelfLifeDays = record.shelfLifeDays();
    }

    @Override
    Material toRecord() {
        return new Material(key(), name, pack, mass, volume, longest, dry, upright, shelfLifeDays);
    }
}
