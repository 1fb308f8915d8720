package org.firmset.trade.water;

import org.firmset.measure.Described;
import org.firmset.measure.Flow;
import org.firmset.measure.Length;
import org.firmset.measure.Pressure;
import org.firmset.measure.Temperature;
import org.firmset.measure.Volume;
import org.jspecify.annotations.Nullable;

/** A line from a tank by gravity: one main, and from its end a branch to each outlet. */
@Described("A line from a tank by gravity: one main, and from its end a branch to each outlet.")
public record WaterLine(
        @Described(
                value = "Outlets, each with its name, the length of its branch from the main's end and how far it lies"
                        + " below the tank's outlet, and if known what it lets through at a pressure.",
                usual = "cabin sink = 120 ft, 12 ft; shop tap = 60 ft, 2 ft")
        Outlets outlets,

        @Described(
                value = "Depth of water above the tank's outlet when the tank is full.",
                least = "0.1 m",
                most = "6 m",
                usual = "5 ft")
        Length waterDepth,

        @Described(value = "Water in the full tank.", least = "20 L", most = "200 m3", usual = "1650 gal")
        Volume tankVolume,

        @Described(value = "Length of the main.", least = "0 m", most = "1000 m", usual = "200 ft")
        Length mainLength,

        @Described(value = "Inside diameter of the main.", least = "10 mm", most = "160 mm", usual = "1.049 in")
        Length mainBore,

        @Described(value = "Inside diameter of the branches.", least = "8 mm", most = "110 mm", usual = "0.824 in")
        Length branchBore,

        @Described(value = "What the pipes are made of.", usual = "pvc")
        PipeMaterial material,

        @Described(value = "The law of friction.", usual = "darcy-weisbach")
        FrictionLaw law,

        @Described(value = "Temperature of the water.", least = "0.5 degC", most = "40 degC", usual = "50 degF")
        Temperature waterTemperature,

        @Described(value = "Elbows of 90 degrees along the main.", least = "0", most = "100", usual = "4")
        int elbows,

        @Described(value = "Tees that the main runs straight through.", least = "0", most = "100", usual = "0")
        int tees,

        @Described(value = "Ball and gate valves along the main, open.", least = "0", most = "50", usual = "1")
        int valves,

        @Described(value = "Globe valves along the main, open.", least = "0", most = "20", usual = "0")
        int globeValves,

        @Described(value = "Swing check valves along the main.", least = "0", most = "20", usual = "0")
        int checkValves,

        @Described(value = "Elbows of 90 degrees along each branch.", least = "0", most = "100", usual = "3")
        int branchElbows,

        @Described(value = "Ball and gate valves along each branch, open.", least = "0", most = "50", usual = "1")
        int branchValves,

        @Described(value = "What an outlet is when nothing else is said of it.", usual = "sink")
        Fixture fixture,

        @Described(value = "How the toilets flush; it says the least pressure.", usual = "flush-tank")
        FixtureGroup fixtureGroup,

        @Described(
                value = "Least pressure wanted before an outlet while it runs; left out for that of the fixtures.",
                least = "0 psi",
                most = "100 psi")
        @Nullable
        Pressure leastPressure,

        @Described(value = "Least flow wanted from an outlet.", least = "0 gpm", most = "100 gpm", usual = "1 gpm")
        Flow leastFlow) {}
