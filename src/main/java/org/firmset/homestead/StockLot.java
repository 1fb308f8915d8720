package org.firmset.homestead;

import java.time.LocalDate;
import org.firmset.measure.Described;

@Described("Packs on site that are not used yet.")
public record StockLot(
        @Described(value = "The material.", names = "material")
        String material,

        @Described(value = "How many packs.", least = "1", most = "100000")
        int packs,

        @Described("When they were bought.") LocalDate since) {}
