package org.firmset.spend.store;

import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** The days on which anything was bought, put together to spans with a few hundred receipts each; a day stays whole. */
record ReceiptDays(LocalDate from, LocalDate to) {
    /** How many receipts a span holds unless one day alone has more. */
    static final int AT_ONCE = 200;

    private record Day(LocalDate on, long receipts) {}

    /** All of a homestead, in order. */
    static List<ReceiptDays> of(EntityManager entities, UUID homestead) {
        List<Day> days = entities.createQuery(
                        "select r.boughtOn, count(*) from ReceiptRow r where r.homestead = :homestead"
                                + " group by r.boughtOn order by r.boughtOn",
                        Day.class)
                .setParameter("homestead", homestead)
                .getResultList();
        List<ReceiptDays> spans = new ArrayList<>();
        long count = 0;
        for (Day day : days) {
            count += day.receipts();
            if (spans.isEmpty() || count > AT_ONCE) {
                spans.add(new ReceiptDays(day.on(), day.on()));
                count = day.receipts();
            } else {
                spans.add(new ReceiptDays(spans.removeLast().from(), day.on()));
            }
        }
        return spans;
    }
}
