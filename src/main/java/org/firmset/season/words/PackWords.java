package org.firmset.season.words;

/** Counts of packs in words. */
public final class PackWords {
    private PackWords() {}

    /** 1 box of Nails; 18 bags of Concrete mix. */
    public static String of(int count, String pack, String name) {
        return "%d %s of %s".formatted(count, many(count, pack), name);
    }

    private static String many(int count, String pack) {
        if (count == 1) {
            return pack;
        }
        return pack.matches(".*(s|x|ch|sh)") ? pack + "es" : pack + "s";
    }
}
