package org.firmset.homestead.ui;

import java.util.LinkedHashMap;
import java.util.Map;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.part.Part;
import org.firmset.measure.UnitSystem;

/**
 * What a form must know of the homestead its record belongs to.
 *
 * @param homestead the homestead as it is kept
 */
record Surroundings(Homestead homestead) {

    UnitSystem units() {
        return homestead.units();
    }

    String currency() {
        return homestead.currency();
    }

    /** Keys and names of the things of a kind ("stage") that can be named. */
    Map<String, String> named(String kind) {
        Map<String, String> result = new LinkedHashMap<>();
        for (Part part : Part.of(Homestead.class)) {
            if (part.list() && part.nested() && kind.equals(Part.kindOf(part.type()))) {
                Lists.of(homestead, part).forEach(r -> result.put(Lists.key(r).orElseThrow(), Lists.name(r, this)));
            }
        }
        return result;
    }
}
