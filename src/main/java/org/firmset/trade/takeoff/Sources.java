package org.firmset.trade.takeoff;

import org.firmset.trade.trace.Source;

/** Where the formulas of this room come from. */
final class Sources {
    static final Source BLOCK_RULE = Source.seen("US Navy Builder training manual, 3/4 and 3/2 rules");
    static final Source BLOCK_GEOMETRY = Source.seen("ASTM C90-06 least shell and web, as in NCMA TEK 14-1B");
    static final Source BLOCK_GEOMETRY_MEMORY = Source.memory("ASTM C90-06 least shell and web thickness");
    static final Source GROUT_RULES = Source.seen("TMS 602 Art. 3.2 F, 3.5 A, 3.5 D; ASTM C476");
    static final Source BAG_LABELS = Source.seen("bag labels, 0.0075 ft3 a pound");
    static final Source BAR_TABLE = Source.seen("ASTM A615 Table 1, nominal diameters; 490 lb/ft3");
    static final Source BEND_TABLE = Source.seen("ACI 318-19 Table 25.3.1; ACI 318-11 7.1.3, 7.2.2");
    static final Source HOOK_TABLE = Source.memory("CRSI hook tables, by formula");
    static final Source CONCRETE_LAP = Source.seen("ACI 318-14/-19 25.4.2.3, 25.5.2");
    static final Source MASONRY_LAP = Source.seen("IBC 2107.2.1 Eq. 21-1");
    static final Source ARC = Source.memory("geometry of the centre-line arc");
    static final Source EARTH = Source.memory("FM 5-434 (2000) Table 1-1");
    static final Source LIFTS = Source.seen("geotechnical report wording: 8 in loose, 4 in in confined areas");
    static final Source CUTTING = Source.practice("one-dimensional cutting stock, Gilmore and Gomory 1961");

    private Sources() {}
}
