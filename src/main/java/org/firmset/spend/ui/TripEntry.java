package org.firmset.spend.ui;

import java.math.BigDecimal;
import org.firmset.measure.Described;
import org.firmset.measure.Hours;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;

/**
 * What is typed about a trip, one thing for each field, with the limits of each. They keep a slip of the finger out, and
 * every sum small enough to be added up.
 *
 * @param use miles on a gallon, or litres for 100 km
 * @param price of a gallon or a litre
 */
record TripEntry(
        @Described(value = "Distance there and back.", least = "0 km", most = "20000 km")
        Length distance,

        @Described(value = "Money for each mile or kilometre.", least = "0", most = "10000")
        BigDecimal rate,

        @Described(value = "How much fuel the drive takes.", least = "0.1", most = "1000")
        BigDecimal use,

        @Described(value = "Price of fuel.", least = "0", most = "100000")
        BigDecimal price,

        @Described(value = "Hours worked, of all people.", most = "2000 h")
        Hours hours,

        @Described(value = "Mass brought.", least = "0 kg", most = "100000 kg")
        Mass mass) {}
