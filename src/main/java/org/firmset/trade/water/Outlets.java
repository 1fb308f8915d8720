package org.firmset.trade.water;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.firmset.measure.Dimension;
import org.firmset.measure.Length;
import org.firmset.measure.Units;
import org.firmset.measure.UnitsFault;
import org.jspecify.annotations.Nullable;

/**
 * The outlets at the end of a main, each with a branch of its own, written such as "cabin sink = 120 ft, 12 ft; shop
 * tap = 60 ft, 2 ft, 5 gpm at 30 psi": name, length of the branch, drop below the tank's outlet, and what it lets
 * through.
 *
 * @param all 1 to 16, names differ
 */
public record Outlets(List<Outlet> all) {
    private static final int MOST = 16;
    private static final int LONGEST_TEXT = 2000;
    private static final int SHOWN = 60;
    private static final String SUCH_AS =
            "; write it such as 'cabin sink = 120 ft, 12 ft; shop tap = 60 ft, 2 ft, 5 gpm at 30 psi'";
    private static final Pattern ENTRY = Pattern.compile("([^=]+)=([^=,]+),([^=,]+)(?:,([^=,]+))?");

    public Outlets {
        all = List.copyOf(all);
        if (all.isEmpty() || all.size() > MOST) {
            throw new UnitsFault("'" + all.size() + " outlets' is not a list of 1 to " + MOST + " outlets" + SUCH_AS);
        }
        Set<String> names = new HashSet<>();
        for (Outlet outlet : all) {
            if (!names.add(outlet.name())) {
                throw new UnitsFault("'" + outlet.name() + "' is not the name of one outlet only" + SUCH_AS);
            }
        }
    }

    /** @throws UnitsFault when the text is no list of outlets; the message says why */
    public static Outlets parse(String text) {
        if (text.length() > LONGEST_TEXT) {
            throw new UnitsFault(
                    "'" + shortened(text) + "' is not a list of at most " + LONGEST_TEXT + " characters" + SUCH_AS);
        }
        List<Outlet> read = new ArrayList<>();
        for (String entry : text.split(";", -1)) {
            if (!entry.isBlank()) {
                read.add(outlet(entry.strip()));
            }
        }
        return new Outlets(read);
    }

    private static Outlet outlet(String entry) {
        Matcher matcher = ENTRY.matcher(entry);
        if (!matcher.matches()) {
            throw new UnitsFault("'" + shortened(entry) + "' is not an outlet with its branch and drop" + SUCH_AS);
        }
        @Nullable Rating rating = matcher.group(4) == null ? null : Rating.parse(matcher.group(4));
        return new Outlet(matcher.group(1).strip(), length(matcher.group(2)), length(matcher.group(3)), rating);
    }

    private static Length length(String text) {
        return new Length(Units.parse(Dimension.LENGTH, text.strip()).value());
    }

    static String shortened(String text) {
        return text.length() > SHOWN ? text.substring(0, SHOWN) + "..." : text;
    }

    /** The text that {@link #parse} reads back to the same outlets. */
    @Override
    public String toString() {
        return all.stream().map(Outlet::toString).collect(Collectors.joining("; "));
    }
}
