package org.firmset.homestead.store;

import jakarta.persistence.Embeddable;
import jakarta.persistence.FetchType;
import jakarta.persistence.ManyToOne;
import org.firmset.homestead.Supply;

@Embeddable
record SupplyColumns(
        String line,
        @ManyToOne(fetch = FetchType.LAZY, optional = false) MaterialRow material) {

    Supply toRecord() {
        return new Supply(line, material.key());
    }
}
