package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.FetchType;
import jakarta.persistence.ManyToOne;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.firmset.homestead.Price;

@Embeddable
record PriceColumns(
        @ManyToOne(fetch = FetchType.LAZY, optional = false) MaterialRow material,

        BigDecimal amount,

        @Column(name = "asked_on") LocalDate on) {

    Price toRecord(HomesteadRow homestead) {
        return new Price(material.key(), homestead.money(amount), on);
    }
}
