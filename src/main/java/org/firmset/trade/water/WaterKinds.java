package org.firmset.trade.water;

import java.util.List;
import org.firmset.trade.trace.Kind;

/** The calculators of this room. */
public final class WaterKinds {
    public static final Kind<Tank> TANK = new Kind<>(
            "tank",
            "Water tank",
            "Works out what a tank holds and weighs, what its base and the ground carry, and what wind does to it"
                    + " empty.",
            Tank.class,
            TankWork::work);

    public static final Kind<WaterLine> WATER_LINE = new Kind<>(
            "water-line",
            "Water line from a tank",
            "Works out flow and pressure at outlets fed by gravity, and how long the tank lasts.",
            WaterLine.class,
            WaterLineWork::work);

    public static final Kind<PumpFill> PUMP_FILL = new Kind<>(
            "pump-fill",
            "Filling a tank by pump",
            "Works out the head, power, hours and energy of pumping water up to a tank.",
            PumpFill.class,
            PumpFillWork::work);

    public static final Kind<PressureTest> PRESSURE_TEST = new Kind<>(
            "pressure-test",
            "Pressure test of a water line",
            "Works out how a line is tested with water, and whether a test that was made passes.",
            PressureTest.class,
            PressureTestWork::work);

    public static final Kind<Disinfection> DISINFECTION = new Kind<>(
            "disinfection",
            "Disinfection with chlorine",
            "Works out how much chlorine a tank or its pipes take, how long, and what is measured at the end.",
            Disinfection.class,
            DisinfectionWork::work);

    public static final List<Kind<?>> ALL = List.of(TANK, WATER_LINE, PUMP_FILL, PRESSURE_TEST, DISINFECTION);

    private WaterKinds() {}
}
