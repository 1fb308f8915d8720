package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import org.firmset.homestead.CementClass;
import org.firmset.homestead.Cure;
import org.firmset.trade.cure.Ageing;
import org.firmset.trade.cure.StrengthMethod;
import org.jspecify.annotations.Nullable;

@Embeddable
record CureColumns(
        @Column(name = "cure_strength_percent") int strengthPercent,

        @Column(name = "cure_cement") @Enumerated(EnumType.STRING)
        CementClass cement,

        @Column(name = "cure_method") @Enumerated(EnumType.STRING)
        StrengthMethod method,

        @Column(name = "cure_ageing") @Enumerated(EnumType.STRING)
        Ageing ageing) {

    static @Nullable CureColumns of(@Nullable Cure cure) {
        return cure == null
                ? null
                : new CureColumns(cure.strengthPercent(), cure.cement(), cure.method(), cure.ageing());
    }

    Cure toRecord() {
        return new Cure(strengthPercent, cement, method, ageing);
    }
}
