package org.firmset.trade.water;

import java.util.regex.Pattern;
import org.firmset.measure.Length;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Units;
import org.firmset.measure.UnitsFault;
import org.jspecify.annotations.Nullable;

/**
 * A place where water comes out.
 *
 * @param name up to 30 letters, digits, spaces and -_.'/&()#
 * @param branch length of pipe from the main's end, 0 to 600 m
 * @param drop how far it lies below the tank's outlet, -30 to 150 m; under 0 for above
 * @param rating what it lets through; null for what is said of all outlets
 */
public record Outlet(
        String name, Length branch, Length drop, @Nullable Rating rating) {
    private static final Pattern NAME =
            Pattern.compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{N} \\-_.'/&()#]{0,28}[\\p{L}\\p{N}.)])?");
    private static final double LONGEST = 600;
    private static final double HIGHEST = 30;
    private static final double DEEPEST = 150;

    public Outlet {
        if (!NAME.matcher(name).matches()) {
            throw new UnitsFault("'" + Outlets.shortened(name)
                    + "' is not a name of an outlet of up to 30 letters and digits; write it such as 'cabin sink'");
        }
        if (!(branch.amount() >= 0 && branch.amount() <= LONGEST)) {
            throw new UnitsFault("'" + Units.editable(branch, UnitSystem.US)
                    + "' is not a branch of 0 to 600 m of pipe; write it such as '120 ft'");
        }
        if (!(drop.amount() >= -HIGHEST && drop.amount() <= DEEPEST)) {
            throw new UnitsFault("'" + Units.editable(drop, UnitSystem.US)
                    + "' is not a drop from -30 m (above the tank) to 150 m; write it such as '12 ft'");
        }
    }

    /** The text it is written with: "cabin sink = 120 ft, 12 ft". */
    @Override
    public String toString() {
        String places =
                name + " = " + Units.editable(branch, UnitSystem.US) + ", " + Units.editable(drop, UnitSystem.US);
        return rating == null ? places : places + ", " + rating;
    }
}
