package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import org.firmset.homestead.HorizonSector;

@Embeddable
record HorizonColumns(
        @Column(name = "from_deg") BigDecimal from,
        @Column(name = "to_deg") BigDecimal to,
        @Column(name = "elevation_deg") BigDecimal elevation) {

    static HorizonColumns of(HorizonSector sector) {
        return new HorizonColumns(sector.fromDegrees(), sector.toDegrees(), sector.elevationDegrees());
    }

    HorizonSector toRecord() {
        return new HorizonSector(from, to, elevation);
    }
}
