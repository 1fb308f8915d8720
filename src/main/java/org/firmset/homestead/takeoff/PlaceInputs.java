package org.firmset.homestead.takeoff;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.MonthNormal;
import org.firmset.measure.Temperature;
import org.firmset.trade.climate.MonthlyTemperatures;
import org.firmset.trade.trace.Kind;

/** Inputs that the homestead knows already: what the months are usually like at its place. */
public final class PlaceInputs {
    private static final Map<String, Function<MonthNormal, Temperature>> MONTHLY =
            Map.of("meanHigh", MonthNormal::meanHigh, "meanLow", MonthNormal::meanLow);

    private PlaceInputs() {}

    /** As texts by the names of inputs; empty when the calculator asks for nothing of that or the place is not described. */
    public static Map<String, String> of(Homestead homestead, Kind<?> kind) {
        List<MonthNormal> months = homestead.place().climate();
        Map<String, String> texts = new LinkedHashMap<>();
        for (Inputs.Input input : Inputs.of(kind)) {
            boolean monthly = input.part().type() == MonthlyTemperatures.class
                    && MONTHLY.containsKey(input.part().name());
            if (monthly && !months.isEmpty()) {
                Function<MonthNormal, Temperature> value =
                        Objects.requireNonNull(MONTHLY.get(input.part().name()));
                texts.put(
                        input.part().name(),
                        MonthlyTemperatures.of(months.stream().map(value).toList())
                                .toString());
            }
        }
        return texts;
    }
}
