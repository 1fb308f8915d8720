package org.firmset.homestead.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Locale;
import java.util.UUID;

/**
 * The kinds of things a homestead is made of, and the ids under which they are kept. The names are part of the ids in
 * every database, so none may ever change.
 */
public enum Kind {
    PERSON,
    TOOL,
    MATERIAL,
    VEHICLE,
    TRAILER,
    SUBPROJECT,
    STAGE,
    WAIT,
    SUPPLIER,
    OPEN_RULE,
    ADDED_DATE,
    STOCK_LOT,
    PIN,
    TAKEOFF;

    /**
     * The id of the thing with this key in this homestead, the same for good. Added dates, stock lots and pins have no
     * key: theirs is their position in the list, so their ids are not worth keeping elsewhere.
     */
    public UUID idOf(UUID homestead, String key) {
        return UUID.nameUUIDFromBytes((homestead + "/" + name() + "/" + key).getBytes(UTF_8));
    }

    /** As it reads in a sentence: "open rule". */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
