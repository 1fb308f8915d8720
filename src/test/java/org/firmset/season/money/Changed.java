package org.firmset.season.money;

import java.util.ArrayList;
import java.util.List;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.part.Part;
import org.jspecify.annotations.Nullable;

/** Homesteads that are another in one part. */
public final class Changed {
    private Changed() {}

    /** @param name of the part, such as "tools" */
    public static Homestead with(Homestead homestead, String name, @Nullable Object value) {
        return with(Homestead.class, homestead, name, value);
    }

    /** Any record of a homestead that is another in one part. */
    public static <T extends Record> T with(Class<T> type, T record, String name, @Nullable Object value) {
        List<@Nullable Object> values = new ArrayList<>();
        for (Part part : Part.of(type)) {
            values.add(part.name().equals(name) ? value : part.valueIn(record));
        }
        return Part.record(type, values);
    }
}
