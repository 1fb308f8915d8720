package org.firmset.trade.cure;

import org.firmset.trade.trace.Source;

/** Where the figures of this room come from. */
final class Sources {
    static final Source EN_STRENGTH = Source.seen("EN 1992-1-1:2004, 3.1.2(6), Eq. 3.2");
    static final Source EN_AGE =
            Source.memory("EN 1992-1-1:2004, Eq. B.10; its 4000 K and 293 K seen in the CEB-FIP Model Code 1990");
    static final Source ACI_STRENGTH = Source.memory("ACI 209R-92, Eq. 2-1");
    static final Source ASTM_FACTOR = Source.memory("ASTM C1074, Eq. 1");
    static final Source ASTM_AGE = Source.memory("ASTM C1074, Eq. 2");

    static final Source STRIPPING = Source.seen(
            "committee guidance as a trade magazine sums it up: side forms 12 to 24 h, short spans 3 to 7 days,"
                    + " counting only time at 10 °C (50 °F) or more");
    static final Source TANK = Source.seen("two tank makers: at least five days");

    static final Source COLD_LEAST = Source.memory("ACI 306R-88, Table 3.1 (306R-10, Table 5.1)");
    static final Source COLD_PERIOD = Source.memory("ACI 306R-88, Table 5.1 (306R-10, Table 7.1)");
    static final Source HEAT_BALANCE = Source.memory("ACI 306R-88, Eq. 3.1");
    static final Source FREEZING = Source.seen("PCA, chapter on cold-weather concreting: 500 psi");

    static final Source EVAPORATION = Source.seen("Uno, ACI Materials Journal 95-M34");
    static final Source EVAPORATION_US = Source.seen("the chart of ACI 305R and NRMCA as a formula");
    static final Source EVAPORATION_LIMIT = Source.seen("ACI 305R: 0.2 lb/ft2 an hour, usually quoted as 1 kg/m2");
    static final Source HOT_CONCRETE = Source.seen("ACI 305.1-14, 3.3");
    static final Source MASONRY_HOT = Source.seen("TMS 602, Art. 1.8 D");
    static final Source MASONRY_COLD = Source.seen("TMS 602, Art. 1.8 C");
    static final Source MASONRY_AFTER = Source.seen("CMHA TEK 03-01C: 24 h for mortar, 48 h for grouted work");

    private Sources() {}
}
