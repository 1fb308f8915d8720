package org.firmset.trade.water;

import java.math.BigDecimal;
import org.firmset.measure.Described;
import org.firmset.measure.Flow;
import org.firmset.measure.Length;
import org.firmset.measure.Temperature;
import org.firmset.measure.Volume;

/** A pump that fills a tank through one pipe. */
@Described("A pump that fills a tank through one pipe.")
public record PumpFill(
        @Described(
                value = "Height from the water that is drawn to where it comes out at the tank.",
                least = "0 m",
                most = "150 m",
                usual = "40 ft")
        Length lift,

        @Described(
                value = "Height of the pump above the water it draws; 0 for a pump in or below the water.",
                least = "0 m",
                most = "9 m",
                usual = "0 ft")
        Length suctionLift,

        @Described(value = "Length of the pipe.", least = "1 m", most = "1000 m", usual = "200 ft")
        Length pipeLength,

        @Described(value = "Inside diameter of the pipe.", least = "10 mm", most = "160 mm", usual = "1.049 in")
        Length bore,

        @Described(value = "What the pipe is made of.", usual = "pvc")
        PipeMaterial material,

        @Described(value = "The law of friction.", usual = "darcy-weisbach")
        FrictionLaw law,

        @Described(value = "Temperature of the water.", least = "0.5 degC", most = "40 degC", usual = "50 degF")
        Temperature waterTemperature,

        @Described(value = "Elbows of 90 degrees along the pipe.", least = "0", most = "100", usual = "6")
        int elbows,

        @Described(value = "Ball and gate valves along the pipe, open.", least = "0", most = "50", usual = "1")
        int valves,

        @Described(value = "Swing check valves along the pipe.", least = "0", most = "20", usual = "1")
        int checkValves,

        @Described(value = "Flow wanted.", least = "0.2 gpm", most = "100 gpm", usual = "5 gpm")
        Flow flow,

        @Described(value = "Water to be pumped.", least = "20 L", most = "200 m3", usual = "1650 gal")
        Volume volume,

        @Described(
                value = "Percent of the electrical power that reaches the water, motor and pump together.",
                least = "5",
                most = "85",
                usual = "40")
        BigDecimal efficiencyPercent) {}
