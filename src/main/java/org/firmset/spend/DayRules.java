package org.firmset.spend;

import java.time.LocalDate;
import java.util.List;
import org.firmset.homestead.file.Fault;
import org.firmset.homestead.part.Scalars;
import org.jspecify.annotations.Nullable;

/**
 * What must hold for the days of a receipt. It tells what has happened: nothing was bought or paid after today. Only the
 * rest of an order may be still to come.
 *
 * @param today null to take what is dated later, too
 */
record DayRules(Receipt receipt, @Nullable LocalDate today, String place, List<Fault> faults) {
    void check() {
        checkYear("/date", receipt.date());
        if (isToCome(receipt.date())) {
            refuse("/date", receipt.date(), "is still to come: today is " + today, laterRemedy());
        }
        LocalDate rest = receipt.restOn();
        if (rest != null) {
            checkYear("/restOn", rest);
            checkRest(rest);
        }
    }

    private String laterRemedy() {
        return switch (receipt.state()) {
            case PAID, PAID_AHEAD ->
                "Correct it. What will be paid then is 'ordered': write the day of the order as its date and this day as"
                        + " the one of its rest";
            case ORDERED -> "Write the day it was ordered; only the day of its rest may be still to come";
            case RETURNED -> "Correct it, or write the return once the money is back";
        };
    }

    private void checkRest(LocalDate rest) {
        if (receipt.state() == ReceiptState.RETURNED) {
            refuse("/restOn", rest, "is the day of a rest, and a return leaves none to pay", "Leave it out");
        } else if (rest.isBefore(receipt.date())) {
            refuse("/restOn", rest, "is before the receipt's own date, " + receipt.date(), "Look at both days");
        } else if (receipt.state().isPaid() && isToCome(rest)) {
            refuse(
                    "/restOn",
                    rest,
                    "is still to come, so the rest is not paid: today is " + today,
                    "Write 'ordered' as its state until it is, or the day it was paid");
        }
    }

    private boolean isToCome(LocalDate day) {
        return today != null && day.isAfter(today);
    }

    /** Within what a homestead file may name, as a kept budget names these days too. */
    private void checkYear(String at, LocalDate day) {
        if (day.isBefore(Scalars.FIRST_DATE) || day.isAfter(Scalars.LAST_DATE)) {
            refuse(at, day, "is not between " + Scalars.FIRST_DATE + " and " + Scalars.LAST_DATE, "Look at its year");
        }
    }

    private void refuse(String at, LocalDate day, String problem, String remedy) {
        faults.add(new Fault(place + at, day.toString(), problem, remedy));
    }
}
