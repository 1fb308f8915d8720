package org.firmset.homestead;

import java.time.DayOfWeek;
import java.util.List;
import org.firmset.measure.Described;
import org.firmset.measure.Mass;
import org.javamoney.moneta.Money;

@Described("On what terms a supplier brings things to site. Somebody must be there to take them.")
public record DeliveryTerms(
        @Described("Fee of one delivery.") Money fee,

        @Described(value = "The most one delivery may weigh.", least = "1 kg", most = "40 t")
        Mass largestMass,

        @Described(value = "Days between order and delivery.", least = "0", most = "730")
        int leadDays,

        @Described("Weekdays on which it comes.") List<DayOfWeek> weekdays) {
    public DeliveryTerms {
        weekdays = List.copyOf(weekdays);
    }
}
