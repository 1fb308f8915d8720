package org.firmset.spend.ui;

import com.vaadin.flow.component.html.Div;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.firmset.homestead.OpenTrip;

/** First and last day of a trip that was made. */
final class TripDays extends Div {
    private static final int MOST_DAYS = 60;

    private final LocalDate today;
    private final DayField first;
    private final DayField last;

    /** @param likely shown to begin with */
    TripDays(OpenTrip likely, LocalDate today) {
        this.today = today;
        first = new DayField("First day", likely.first());
        last = new DayField("Last day", likely.last());
        first.setManualValidation(true);
        last.setManualValidation(true);
        // a trip ends where it began until somebody says otherwise
        first.addValueChangeListener(e -> {
            if (e.getValue() != null
                    && (last.getValue() == null || last.getValue().isBefore(e.getValue()))) {
                last.setValue(e.getValue());
            }
        });
        first.addValueChangeListener(e -> check());
        last.addValueChangeListener(e -> check());
        addClassName("fs-receipt-head");
        add(first, last);
    }

    /** The days that were free last, up to today; today alone where there were none, or very many. */
    static OpenTrip likely(Optional<OpenTrip> latest, LocalDate today) {
        return latest.map(t -> new OpenTrip(t.first(), t.last().isAfter(today) ? today : t.last()))
                .filter(t -> length(t.first(), t.last()) <= MOST_DAYS)
                .orElseGet(() -> new OpenTrip(today, today));
    }

    private static long length(LocalDate from, LocalDate to) {
        return ChronoUnit.DAYS.between(from, to) + 1;
    }

    void onChange(Runnable changed) {
        first.addValueChangeListener(e -> changed.run());
        last.addValueChangeListener(e -> changed.run());
    }

    /** Empty while they are not right. */
    Optional<OpenTrip> peek() {
        return firstFault().isEmpty() && lastFault().isEmpty()
                ? Optional.of(new OpenTrip(first.getValue(), last.getValue()))
                : Optional.empty();
    }

    /** How many; 0 while they are not right. */
    int count() {
        return peek().map(t -> (int) length(t.first(), t.last())).orElse(0);
    }

    /** Whether they are right; marks the fields that are not. */
    boolean check() {
        return mark(first, firstFault()) & mark(last, lastFault());
    }

    private static boolean mark(DayField field, Optional<String> fault) {
        field.setInvalid(fault.isPresent());
        field.setErrorMessage(fault.orElse(""));
        return fault.isEmpty();
    }

    private Optional<String> firstFault() {
        if (first.getValue() == null) {
            return Optional.of("Write it such as 2026-10-17");
        }
        return first.getValue().isAfter(today)
                ? Optional.of("This day has not come yet. The plan counts trips that are still to be made.")
                : Optional.empty();
    }

    private Optional<String> lastFault() {
        if (last.getValue() == null) {
            return Optional.of("Write it such as 2026-10-18");
        }
        if (first.getValue() == null) {
            return Optional.empty();
        }
        long days = length(first.getValue(), last.getValue());
        if (days < 1) {
            return Optional.of("This is before the first day. Look at both.");
        }
        return days > MOST_DAYS
                ? Optional.of("This makes %d days; the most is %d. Write several trips.".formatted(days, MOST_DAYS))
                : Optional.empty();
    }
}
