package org.firmset.homestead;

import org.firmset.measure.Described;
import org.firmset.measure.Hours;
import org.firmset.measure.Length;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

@Described("The drive to the place and back.")
public record Travel(
        @Described(value = "Distance one way.", least = "0 km", most = "5000 km")
        Length distance,

        @Described(value = "Site hours the first day of a trip loses to the drive and to unloading.", most = "24 h")
        Hours lostArriving,

        @Described(value = "Site hours the last day of a trip loses to clearing up and the drive.", most = "24 h")
        Hours lostLeaving,

        @Described("Fuel, wear and tolls of one trip.") Money costPerTrip,

        @Described("Food and the like for each day of a trip.")
        Money costPerDay,

        @Described(value = "Vehicle the trips are made with.", names = "vehicle")
        String vehicle,

        @Described(value = "Trailer that comes along; left out for none.", names = "trailer") @Nullable
        String trailer,

        @Described(value = "How many runs to the yard and back a trip may add.", least = "0", most = "4")
        int mostExtraRuns,

        @Described(value = "Labour one such run takes.", most = "24 h")
        Hours extraRunTime,

        @Described("Fuel and wear of one such run.") Money extraRunCost) {}
