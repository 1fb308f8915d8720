package org.firmset.homestead.ui;

import java.util.Locale;
import java.util.Set;

/** Keys made of names. */
final class Keys {
    private static final int LONGEST = 60;

    private Keys() {}

    /**
     * A key that nothing else has yet.
     *
     * @param otherwise what to call it when no letter of the name can stand in a key
     */
    static String of(String name, String otherwise, Set<String> taken) {
        String start =
                name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
        String base = start.isEmpty() ? otherwise : start.substring(0, Math.min(start.length(), LONGEST - 6));
        String key = base;
        for (int i = 2; taken.contains(key); i++) {
            key = base + "-" + i;
        }
        return key;
    }
}
