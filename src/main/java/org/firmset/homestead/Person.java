package org.firmset.homestead;

import org.firmset.measure.Described;
import org.firmset.measure.Mass;

@Described("Somebody who works here.")
public record Person(
        @Described(value = "Key of the person.", key = true) String key,

        @Described("What to call the person on screen and paper.")
        String name,

        @Described(value = "Mass in the vehicle, clothes and bag included.", least = "0 kg", most = "250 kg")
        Mass mass,

        @Described(value = "Work done in an hour, in percent of a practised builder's.", least = "10", most = "150")
        int workShare) {}
