package org.firmset.homestead;

import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Volume;
import org.jspecify.annotations.Nullable;

@Described("Something that is bought and carried in whole packs.")
public record Material(
        @Described(value = "Key of the material.", key = true)
        String key,

        @Described("Name of the material.") String name,

        @Described("What one pack is: bag, block, bar, roll.")
        String pack,

        @Described(value = "Mass of a pack.", least = "0 kg", most = "40 t")
        Mass mass,

        @Described(value = "Volume of a pack as it lies.", least = "0 m3", most = "60 m3")
        Volume volume,

        @Described(value = "Longest side of a pack; left out when it fits anywhere.", least = "0 m", most = "30 m")
        @Nullable
        Length longest,

        @Described("It must be kept dry on site.") boolean dry,

        @Described(value = "It has to stand upright on the way.", usual = "false")
        boolean upright,

        @Described(value = "Days it stays good after it was bought; left out for no limit.", least = "0", most = "3650")
        @Nullable
        Integer shelfLifeDays) {}
