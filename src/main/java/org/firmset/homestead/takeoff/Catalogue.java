package org.firmset.homestead.takeoff;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.firmset.trade.cure.CureKinds;
import org.firmset.trade.takeoff.TakeoffKinds;
import org.firmset.trade.trace.Kind;
import org.firmset.trade.water.WaterKinds;

/** Every calculator there is, by the room it comes from. */
public final class Catalogue {
    private static final Map<String, List<Kind<?>>> SHELVES = new LinkedHashMap<>();

    static {
        SHELVES.put("Quantities", TakeoffKinds.ALL);
        SHELVES.put("Concrete and weather", CureKinds.ALL);
        SHELVES.put("Water", WaterKinds.ALL);
    }

    private Catalogue() {}

    /** Headings and what stands under them, in the order in which a person looks for it. */
    public static Map<String, List<Kind<?>>> shelves() {
        return Collections.unmodifiableMap(SHELVES);
    }

    public static List<Kind<?>> all() {
        return SHELVES.values().stream().flatMap(List::stream).toList();
    }

    public static Optional<Kind<?>> find(String key) {
        return all().stream().filter(kind -> kind.key().equals(key)).findFirst();
    }
}
