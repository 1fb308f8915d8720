package org.firmset.trade.water;

import java.math.BigDecimal;
import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.measure.Pressure;
import org.firmset.measure.Temperature;

/** A test of a water line with water under pressure, planned or made. */
@Described("A test of a water line with water under pressure, planned or made.")
public record PressureTest(
        @Described(
                value = "Greatest pressure the line will work at, at the place of the gauge.",
                least = "1 psi",
                most = "200 psi",
                usual = "50 psi")
        Pressure workingPressure,

        @Described(
                value = "How many times the working pressure is tested; local codes ask 1 to 1.5.",
                least = "1",
                most = "2",
                usual = "1.5")
        BigDecimal factor,

        @Described(
                value = "Least test pressure anywhere that the local code asks for, 0 for none.",
                least = "0 psi",
                most = "200 psi",
                usual = "50 psi")
        Pressure codeLeast,

        @Described(
                value = "Pressure the weakest part of the line is rated for at this temperature.",
                least = "10 psi",
                most = "1000 psi",
                usual = "160 psi")
        Pressure rating,

        @Described(
                value = "Height of the highest point of the line above the gauge.",
                least = "0 m",
                most = "100 m",
                usual = "0 ft")
        Length highestAbove,

        @Described(
                value = "Depth of the lowest point of the line below the gauge.",
                least = "0 m",
                most = "100 m",
                usual = "0 ft")
        Length lowestBelow,

        @Described(value = "What the pipe is made of.", usual = "pvc")
        PipeMaterial material,

        @Described(value = "Inside diameter of the pipe.", least = "8 mm", most = "160 mm", usual = "1.049 in")
        Length bore,

        @Described(value = "Thickness of the pipe's wall.", least = "0.5 mm", most = "20 mm", usual = "0.133 in")
        Length wall,

        @Described(value = "Length of pipe under test.", least = "1 m", most = "5000 m", usual = "300 ft")
        Length length,

        @Described(
                value = "Air left in the pipe, in percent of its volume before pumping up.",
                least = "0",
                most = "5",
                usual = "0")
        BigDecimal airPercent,

        @Described(value = "Minutes the pressure must hold.", least = "10", most = "1440", usual = "15")
        int holdMinutes,

        @Described(value = "Drop of pressure that is allowed.", least = "0 psi", most = "20 psi", usual = "0 psi")
        Pressure allowedDrop,

        @Described(
                value = "Smallest step that can be read off the gauge.",
                least = "0 psi",
                most = "10 psi",
                usual = "1 psi")
        Pressure gaugeStep,

        @Described(
                value = "Minutes the test ran; 0 for a test that is not made yet.",
                least = "0",
                most = "10000",
                usual = "0")
        int minutes,

        @Described(value = "Pressure read at the start.", least = "0 psi", most = "500 psi", usual = "75 psi")
        Pressure startPressure,

        @Described(value = "Pressure read at the end.", least = "0 psi", most = "500 psi", usual = "75 psi")
        Pressure endPressure,

        @Described(
                value = "Temperature of the water in the pipe at the start.",
                least = "0.5 degC",
                most = "40 degC",
                usual = "50 degF")
        Temperature startTemperature,

        @Described(
                value = "Temperature of the water in the pipe at the end.",
                least = "0.5 degC",
                most = "40 degC",
                usual = "50 degF")
        Temperature endTemperature) {

    /**
     * Pressure in pascals to read on the gauge: so many times the working pressure, and at the highest point still what
     * the code asks.
     *
     * @param working in pascals, over 0
     * @param factor 1 or more
     * @param codeLeast in pascals, 0 or more
     * @param headAbove pressure in pascals of the water between the gauge and the highest point, 0 or more
     */
    public static double testPressure(double working, double factor, double codeLeast, double headAbove) {
        double times = Must.beOver0("working", working) * Must.lie("factor", factor, 1, 10);
        return Math.max(times, Must.be0OrMore("codeLeast", codeLeast) + Must.be0OrMore("headAbove", headAbove));
    }
}
