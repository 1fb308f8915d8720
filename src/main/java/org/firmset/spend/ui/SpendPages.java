package org.firmset.spend.ui;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.firmset.spend.ContentHash;
import org.firmset.spend.LineKind;
import org.firmset.spend.ReceiptFilter;
import org.firmset.spend.ReceiptState;
import org.jspecify.annotations.Nullable;

/** What other rooms may know of these pages: where they are. */
public final class SpendPages {
    /** The overview, which stands in the navigation. */
    public static final String OVERVIEW = "spend";

    public static final String RECEIPTS = "spend/receipts";
    public static final String IMPORT = "spend/import";
    /** Where what a trip has cost is written down. */
    public static final String TRIP = "spend/trip";

    static final String NEW = "new";
    static final String DOCUMENTS = "documents";
    private static final String WORK = "work";
    private static final String FINISHED = "finished";

    private SpendPages() {}

    /** Where the receipts of a figure are listed: "spend/receipts?subproject=water&stage=water-wall&month=2027-05". */
    public static String receipts(ReceiptFilter filter) {
        String query = query(filter);
        return RECEIPTS + (query.isEmpty() ? "" : "?" + query);
    }

    static String query(ReceiptFilter filter) {
        List<String> parts = new ArrayList<>();
        add(parts, "subproject", filter.subproject());
        add(parts, "stage", filter.stage());
        add(parts, "material", filter.material());
        add(parts, "supplier", filter.supplier());
        add(parts, "kind", filter.kind() == null ? null : lower(filter.kind()));
        add(parts, "state", filter.state() == null ? null : lower(filter.state()));
        add(parts, "month", filter.month() == null ? null : filter.month().toString());
        add(parts, WORK, filter.finished() == null ? null : FINISHED);
        return String.join("&", parts);
    }

    /** Where a receipt is entered. */
    public static String newReceipt() {
        return RECEIPTS + "/" + NEW;
    }

    /** Where a receipt is shown and changed. */
    public static String receipt(UUID id) {
        return RECEIPTS + "/" + id;
    }

    static String document(ContentHash hash) {
        return DOCUMENTS + "/" + hash.hex();
    }

    private static void add(List<String> parts, String name, @Nullable String value) {
        if (value != null) {
            parts.add(name + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8));
        }
    }

    /** What stands in an address; what is not understood asks for nothing. */
    interface Asked {
        Optional<String> value(String name);
    }

    /** @param finished keys of the stages that are finished by now: an address that names each would grow too long */
    static ReceiptFilter filter(Asked asked, Set<String> finished) {
        return new ReceiptFilter(
                given(asked, "subproject"),
                given(asked, "stage"),
                given(asked, "material"),
                given(asked, "supplier"),
                word(LineKind.values(), given(asked, "kind")),
                word(ReceiptState.values(), given(asked, "state")),
                month(given(asked, "month")),
                FINISHED.equals(given(asked, WORK)) ? finished : null);
    }

    private static @Nullable String given(Asked asked, String name) {
        return asked.value(name).filter(v -> !v.isBlank()).orElse(null);
    }

    private static <E extends Enum<E>> @Nullable E word(E[] all, @Nullable String word) {
        for (E one : all) {
            if (lower(one).equals(word)) {
                return one;
            }
        }
        return null;
    }

    private static @Nullable YearMonth month(@Nullable String text) {
        try {
            return text == null ? null : YearMonth.parse(text);
        } catch (DateTimeException e) {
            // an address somebody typed: show all months
            return null;
        }
    }

    private static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
