package org.firmset.spend.ui;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Supplier;
import org.firmset.spend.Receipt;
import org.firmset.spend.TripReceipt;
import org.firmset.spend.store.KeptReceipt;

/**
 * What is known while a receipt is entered, so that most of it need not be typed.
 *
 * @param suppliers the ones bought from lately first, then those of the homestead
 * @param last the receipt of a purchase that was entered last, as far as dates tell; empty when there is none
 */
record Entering(Homestead homestead, Bearers bearers, LocalDate today, List<String> suppliers, Optional<Receipt> last) {

    static Entering of(Homestead homestead, LocalDate today, List<KeptReceipt> all) {
        List<Receipt> latestFirst = all.reversed().stream()
                .map(KeptReceipt::receipt)
                // a trip that was written down was bought from nobody
                .filter(r -> !TripReceipt.is(r))
                .toList();
        Stream<String> lately = latestFirst.stream().map(Receipt::supplier);
        Stream<String> known = homestead.suppliers().stream().map(Supplier::name);
        return new Entering(
                homestead,
                new Bearers(homestead),
                today,
                Stream.concat(lately, known).distinct().toList(),
                latestFirst.stream().findFirst());
    }

    String currency() {
        return homestead.currency();
    }
}
