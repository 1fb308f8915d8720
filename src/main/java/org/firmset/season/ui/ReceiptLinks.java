package org.firmset.season.ui;

import java.time.YearMonth;
import java.util.Locale;
import java.util.Objects;
import org.firmset.spend.Forecast;
import org.jspecify.annotations.Nullable;

/** Where the receipts of a figure are listed. */
final class ReceiptLinks {
    static final String ALL = "spend/receipts";
    private static final String NOBODY = "-";

    private ReceiptLinks() {}

    static String ofSubproject(@Nullable String key) {
        return ALL + "?subproject=" + Objects.requireNonNullElse(key, NOBODY);
    }

    static String ofMonth(YearMonth month) {
        return ALL + "?month=" + month;
    }

    static String of(Forecast.Of of) {
        return ofSubproject(of.subproject())
                + "&stage=" + Objects.requireNonNullElse(of.stage(), NOBODY)
                + "&kind=" + Objects.requireNonNull(of.kind()).name().toLowerCase(Locale.ROOT);
    }
}
