package org.firmset.season.ui;

import java.time.YearMonth;
import java.util.Collection;
import java.util.Set;
import org.firmset.season.money.Thing;
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
        return SpendPages.receipts(ReceiptFilter.ofSubproject(ReceiptFilter.orNobody(key)));
    }

    static String ofMonth(YearMonth month) {
        return SpendPages.receipts(ReceiptFilter.ALL.withMonth(month));
    }

    static String of(Forecast.Of of) {
        return SpendPages.receipts(ReceiptFilter.ofSubproject(ReceiptFilter.orNobody(of.subproject()))
                .withStage(ReceiptFilter.orNobody(of.stage()))
                .withKind(of.kind()));
    }

    /** Just the receipts of what differs from a budget. */
    static String of(Thing thing) {
        return SpendPages.receipts(thing.receipts());
    }

    /** What a stage cost, whoever bears it. */
    static String ofStage(String key) {
        return SpendPages.receipts(ReceiptFilter.ALL.withStage(key));
    }

    /** What all finished stages cost. */
    static String ofFinished(Collection<String> stages) {
        return SpendPages.receipts(ReceiptFilter.ofFinished(Set.copyOf(stages)));
    }
}
