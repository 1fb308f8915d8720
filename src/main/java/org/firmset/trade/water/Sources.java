package org.firmset.trade.water;

import org.firmset.trade.trace.Source;

/** Where the formulas and figures of this room come from. */
final class Sources {
    static final Source GEOMETRY = Source.memory("geometry");
    static final Source WATER_WEIGHT = Source.memory("water at 1,000 kg/m3, a little more than it ever weighs");
    static final Source BEARING = Source.seen("IBC 2012 Table 1806.2");
    static final Source BEARING_UNKNOWN = Source.seen("24 CFR 3285.202(e), (f)");
    static final Source EDGE = Source.practice("tank makers ask 4 in (100 mm) all round");
    static final Source STATICS = Source.memory("statics of a rigid body");
    static final Source DRAG = Source.seen(
            "F = rho v2 C A / 2; C of tanks 0.8 round and 1.4 square in the UBC wind table, seen second-hand");
    static final Source SAFETY = Source.practice("1.5 against sliding and tipping");
    static final Source DENSITY = Source.seen("Tanaka et al. 2001, Metrologia 38, 301");
    static final Source VISCOSITY = Source.memory("IAPWS SR6-08, liquid water at 0.1 MPa");
    static final Source HEAD = Source.memory("p = rho g h, g = 9.80665 m/s2");
    static final Source DARCY = Source.memory("Darcy-Weisbach with Colebrook 1939; 64 / Re in laminar flow");
    static final Source HAZEN_WILLIAMS =
            Source.seen("Hazen-Williams in SI, Fair, Geyer and Okun, Water and wastewater engineering, Eq. 5.37");
    static final Source FITTINGS =
            Source.seen("loss coefficients of threaded fittings, Munson, Fundamentals of fluid mechanics, Table 8.2");
    static final Source FIXTURES = Source.seen("EPAct 1992; 10 CFR 430.32");
    static final Source RESIDUAL = Source.seen("IPC Appendix E, E103.1");
    static final Source PUMP = Source.memory("P = rho g Q H");
    static final Source TEST_PRESSURE = Source.seen("Chicago plumbing code, rough-in test: not under working pressure");
    static final Source TEST_TIME = Source.memory("IPC 312.5: 15 minutes");
    static final Source TRAPPED = Source.seen(
            "dp = (beta - 3 alpha) dT / (5/4 D / (E e) + gamma), form of the ASHRAE handbook, seen second-hand");
    static final Source STORAGE = Source.seen("ANSI/AWWA C652-11, 4.3");
    static final Source STORAGE_TIMES = Source.memory("ANSI/AWWA C652, retention periods");
    static final Source WALL_TIME = Source.seen("a state's health office on ANSI/AWWA C652: 3 h");
    static final Source PIPES = Source.seen("NSPC 10.9.2 and IPC 610.1");
    static final Source SHOCK = Source.seen("a state's health office: 50 mg/L in the full tank");
    static final Source DOSE = Source.seen("disinfection equations of a state: V x ppm / (1,000,000 x strength)");
    static final Source CHLORINE_LIMIT = Source.memory("40 CFR 141.65: at most 4 mg/L in drinking water");

    private Sources() {}
}
