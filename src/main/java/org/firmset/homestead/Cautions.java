package org.firmset.homestead;

import java.util.List;

/** The usual cautions for work that can hurt someone. Reminders only; see {@link #STANDING}. */
public final class Cautions {
    /** Belongs beside every list of cautions. */
    public static final String STANDING =
            "General reminders only: local code, the engineer, the maker and licensed trades come first.";

    /** Belongs beside what is said of stored water. */
    public static final String WATER =
            "Mix with clean water only, and read the maker's sheet for how much. Do not drink stored or roof water untreated;"
                    + " bring drinking water besides. Local rules on collecting rain may apply.";

    private Cautions() {}

    /** One line for each hazard, in the order given, none twice. */
    public static List<String> of(List<Hazard> hazards) {
        return hazards.stream().distinct().map(Cautions::of).toList();
    }

    private static String of(Hazard hazard) {
        return switch (hazard) {
            case WET_CEMENT ->
                "Wet cement burns skin before you feel it: waterproof gloves and boots, no kneeling in it, rinse at once"
                        + " for a quarter of an hour and get help.";
            case DUST -> "Dust of cut block and concrete scars lungs: cut wet and wear a respirator that fits.";
            case LIFTING -> "Lift bags at waist height, two people or smaller bags for the heavy ones.";
            case REBAR -> "Guard every bar end someone could fall on with caps made to stop it.";
            case VEHICLE ->
                "People and wet sand count in the payload: stay under sticker, axle and tyre limits, tie everything down.";
            case DIGGING ->
                "Have buried lines marked first; keep spoil and machines back from the edge; no deep trench without"
                        + " support.";
            case COMPACTOR ->
                "Compact up and down a slope, never across; keep off pit edges; mind hands, ears and feet; no engine in a"
                        + " closed space.";
            case FORMS -> "Brace forms and fresh walls against wind; do not strip, load or lean on them early.";
            case TANK ->
                "An empty tank flies in wind, a full one crushes: tie it, give it level support everywhere, fill in steps,"
                        + " never stand below.";
            case PRESSURE_TEST ->
                "Test pipes with water only, air let out and joints cured; compressed air in plastic pipe can maim.";
            case GENERATOR ->
                "Generator outdoors, well away from openings, exhaust pointing away, an alarm where people sleep.";
            case TEMPORARY_POWER ->
                "Ground-fault protection, outdoor cords and dry joints; a licensed electrician where the law asks for one.";
            case BATTERY ->
                "Battery and panels cannot be switched off at their source: fuse, cover, air; never charge frozen.";
            case HEIGHTS ->
                "Firm ladder, three points of contact, stop in wind or wet, protection against falls from about 6 ft (2 m).";
            case ALONE ->
                "Alone: no trench, no height, no tank, no chainsaw; leave a back-by time with someone who will act on it.";
            case FIRE ->
                "Look up the fire danger; water and shovel ready, spark arrester on, watch for half an hour after.";
        };
    }
}
