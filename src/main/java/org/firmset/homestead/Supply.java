package org.firmset.homestead;

import org.firmset.measure.Described;

@Described("A quantity of a takeoff that is bought as a material of the homestead.")
public record Supply(
        @Described("The quantity: bags, blocks, loose and so on.")
        String line,

        @Described(value = "The material.", names = "material")
        String material) {}
