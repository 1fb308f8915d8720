package org.firmset.homestead;

import java.util.Optional;
import org.firmset.measure.Described;
import org.firmset.trade.cure.Ageing;
import org.firmset.trade.cure.Cement;
import org.firmset.trade.cure.StrengthCurve;
import org.firmset.trade.cure.StrengthMethod;

@Described(
        "A cure up to a share of the 28-day strength, reckoned with the usual temperatures of the dates it runs over.")
public record Cure(
        @Described(value = "Percent of the 28-day strength.", least = "1", most = "100")
        int strengthPercent,

        @Described("How fast the cement gains strength.") CementClass cement,

        @Described(value = "The published curve of strength against age.", usual = "en-1992")
        StrengthMethod method,

        @Described(value = "How much age a warm or cold day counts for.", usual = "en-1992")
        Ageing ageing) {

    /** The curve it goes by; empty when the method has none for this cement. */
    public Optional<StrengthCurve> curve() {
        return StrengthCurve.of(method, Cement.valueOf(cement.name()));
    }
}
