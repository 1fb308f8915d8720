package org.firmset.homestead;

import java.time.DayOfWeek;
import java.util.List;
import org.firmset.measure.Described;
import org.firmset.measure.Hours;
import org.firmset.measure.Mass;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

@Described("On what terms a supplier brings things to site.")
public record DeliveryTerms(
        @Described("Fee of one delivery.") Money fee,

        @Described(value = "The most one delivery may weigh.", least = "1 kg", most = "40 t")
        Mass largestMass,

        @Described(value = "Days between order and delivery.", least = "0", most = "730")
        int leadDays,

        @Described("Weekdays on which it comes.") List<DayOfWeek> weekdays,

        @Described("Goods worth less than this take the fee for a small order as well; left out for no such rule.")
        @Nullable
        Money leastOrder,

        @Described("The fee for a small order, on top of the fee of the delivery.") @Nullable
        Money smallOrderFee,

        @Described(
                value = "What its truck weighs with nothing on it; left out when it is not known. With a limit of the"
                        + " track it says how much may be on the truck.",
                least = "500 kg",
                most = "40 t")
        @Nullable
        Mass truckEmptyMass,

        @Described(
                value = "Somebody must be there to take it. When not, it may drop things before a trip, save those that"
                        + " must be kept dry.",
                usual = "true")
        boolean attended,

        @Described(
                value = "Time to place it in from the first mixing, for ready-mix; left out for anything else.",
                least = "0.25 h",
                most = "24 h")
        @Nullable
        Hours placeWithin) {
    public DeliveryTerms {
        weekdays = List.copyOf(weekdays);
    }
}
