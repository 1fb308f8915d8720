package org.firmset.homestead.store;

import jakarta.persistence.Embeddable;
import jakarta.persistence.FetchType;
import jakarta.persistence.ManyToOne;
import org.firmset.homestead.Need;

@Embeddable
record NeedColumns(
        @ManyToOne(fetch = FetchType.LAZY, optional = false) MaterialRow material, int packs) {

    Need toRecord() {
        return new Need(material.key(), packs);
    }
}
