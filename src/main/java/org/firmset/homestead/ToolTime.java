package org.firmset.homestead;

import java.math.BigDecimal;
import org.firmset.measure.Described;
import org.firmset.measure.Measured;
import org.jspecify.annotations.Nullable;

@Described("How long a tool runs for some work.")
public record ToolTime(
        @Described(value = "The tool.", names = "tool") String tool,

        @Described(
                value = "Minutes it runs for each hour of labour, or for each pack of the material when one is named.",
                least = "0",
                most = "600")
        BigDecimal minutes,

        @Described(
                value = "The material whose packs it runs for; left out for each hour of labour.",
                names = "material")
        @Nullable
        String material) {
    public ToolTime {
        minutes = Measured.normal(minutes);
    }
}
