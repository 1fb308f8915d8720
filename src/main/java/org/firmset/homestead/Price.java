package org.firmset.homestead;

import java.time.LocalDate;
import org.firmset.measure.Described;
import org.javamoney.moneta.Money;

@Described("What a supplier asks for a material.")
public record Price(
        @Described(value = "The material.", names = "material")
        String material,

        @Described("Price of a pack.") Money amount,
        @Described("When this price was asked.") LocalDate on) {}
