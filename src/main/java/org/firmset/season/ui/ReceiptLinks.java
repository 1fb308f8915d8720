package org.firmset.season.ui;

import java.time.YearMonth;
import java.util.Objects;
import org.firmset.spend.Forecast;
import org.firmset.spend.ReceiptFilter;
import org.firmset.spend.ui.SpendPages;
import org.jspecify.annotations.Nullable;

/** Where the receipts of a figure are listed. */
final class ReceiptLinks {
    private ReceiptLinks() {}

    static String all() {
        return SpendPages.receipts(ReceiptFilter.ALL);
    }

    static String ofSubproject(@Nullable String key) {
        return SpendPages.receipts(ReceiptFilter.ofSubproject(orNobody(key)));
    }

    static String ofMonth(YearMonth month) {
        return SpendPages.receipts(new ReceiptFilter(null, null, null, null, month));
    }

    static String of(Forecast.Of of) {
        return SpendPages.receipts(
                new ReceiptFilter(orNobody(of.subproject()), orNobody(of.stage()), null, of.kind(), null));
    }

    private static String orNobody(@Nullable String key) {
        return Objects.requireNonNullElse(key, ReceiptFilter.NOBODY);
    }
}
