package org.firmset.homestead;

import org.firmset.measure.Described;

@Described("Whole packs of a material that a stage uses up, waste included.")
public record Need(
        @Described(value = "The material.", names = "material")
        String material,

        @Described(value = "How many packs.", least = "1", most = "100000")
        int packs) {}
