package org.firmset.measure;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MILLI;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import javax.measure.Unit;
import systems.uom.common.USCustomary;
import tech.units.indriya.unit.Units;

/** What is measured: its stored unit and the unit symbols people may write. */
public enum Dimension {
    MASS("mass", Mass::new, "kg", massUnits()),
    VOLUME("volume", Volume::new, "m3", volumeUnits()),
    LENGTH("length", Length::new, "m", lengthUnits()),
    AREA("area", Area::new, "m2", areaUnits()),
    ENERGY("energy", Energy::new, "Wh", energyUnits()),
    POWER("power", Power::new, "W", powerUnits()),
    TEMPERATURE("temperature", Temperature::new, "degC", temperatureUnits()),
    PRESSURE("pressure", Pressure::new, "Pa", pressureUnits()),
    FLOW("flow", Flow::new, "L/min", flowUnits()),
    SPEED("speed", Speed::new, "m/s", speedUnits()),
    DENSITY("density", Density::new, "kg/m3", densityUnits());

    private final String word;
    private final Function<BigDecimal, Measured> maker;
    private final String storedSymbol;
    private final Map<String, Unit<?>> units;

    Dimension(String word, Function<BigDecimal, Measured> maker, String storedSymbol, Map<String, Unit<?>> units) {
        this.word = word;
        this.maker = maker;
        this.storedSymbol = storedSymbol;
        this.units = units;
    }

    /** The dimension in a word: "mass". */
    public String word() {
        return word;
    }

    /** Symbol of the unit values are stored in. */
    public String storedSymbol() {
        return storedSymbol;
    }

    /** The symbols people may write, the stored one first. */
    public Map<String, Unit<?>> units() {
        return units;
    }

    Unit<?> storedUnit() {
        return java.util.Objects.requireNonNull(units.get(storedSymbol));
    }

    public Measured of(BigDecimal stored) {
        return maker.apply(stored);
    }

    private static Map<String, Unit<?>> massUnits() {
        Map<String, Unit<?>> units = new LinkedHashMap<>();
        units.put("kg", Units.KILOGRAM);
        units.put("g", Units.GRAM);
        units.put("t", Units.KILOGRAM.multiply(1000));
        units.put("lb", USCustomary.POUND);
        units.put("oz", USCustomary.POUND.divide(16));
        units.put("ton", USCustomary.POUND.multiply(2000));
        return units;
    }

    private static Map<String, Unit<?>> volumeUnits() {
        Unit<?> litre = Units.CUBIC_METRE.divide(1000);
        Unit<?> cubicInch = USCustomary.INCH.pow(3);
        Map<String, Unit<?>> units = new LinkedHashMap<>();
        units.put("m3", Units.CUBIC_METRE);
        units.put("L", litre);
        units.put("mL", litre.divide(1000));
        units.put("ft3", USCustomary.FOOT.pow(3));
        units.put("yd3", USCustomary.YARD.pow(3));
        units.put("in3", cubicInch);
        units.put("gal", cubicInch.multiply(231));
        units.put("qt", cubicInch.multiply(231).divide(4));
        return units;
    }

    private static Map<String, Unit<?>> lengthUnits() {
        Map<String, Unit<?>> units = new LinkedHashMap<>();
        units.put("m", Units.METRE);
        units.put("cm", CENTI(Units.METRE));
        units.put("mm", MILLI(Units.METRE));
        units.put("km", KILO(Units.METRE));
        units.put("ft", USCustomary.FOOT);
        units.put("in", USCustomary.INCH);
        units.put("yd", USCustomary.YARD);
        units.put("mi", USCustomary.MILE);
        return units;
    }

    private static Map<String, Unit<?>> energyUnits() {
        Unit<?> wattHour = Units.JOULE.multiply(3600);
        Map<String, Unit<?>> units = new LinkedHashMap<>();
        units.put("Wh", wattHour);
        units.put("kWh", wattHour.multiply(1000));
        units.put("kJ", Units.JOULE.multiply(1000));
        units.put("MJ", Units.JOULE.multiply(1_000_000));
        return units;
    }

    private static Map<String, Unit<?>> powerUnits() {
        Map<String, Unit<?>> units = new LinkedHashMap<>();
        units.put("W", Units.WATT);
        units.put("kW", Units.WATT.multiply(1000));
        units.put("hp", Units.WATT.multiply(new BigDecimal("745.69987158227022")));
        return units;
    }

    private static Map<String, Unit<?>> temperatureUnits() {
        Map<String, Unit<?>> units = new LinkedHashMap<>();
        units.put("degC", Units.CELSIUS);
        units.put("degF", USCustomary.FAHRENHEIT);
        units.put("K", Units.KELVIN);
        return units;
    }

    private static Map<String, Unit<?>> areaUnits() {
        Map<String, Unit<?>> units = new LinkedHashMap<>();
        units.put("m2", Units.SQUARE_METRE);
        units.put("cm2", CENTI(Units.METRE).pow(2));
        units.put("ft2", USCustomary.FOOT.pow(2));
        units.put("in2", USCustomary.INCH.pow(2));
        units.put("yd2", USCustomary.YARD.pow(2));
        return units;
    }

    private static Map<String, Unit<?>> pressureUnits() {
        // the pound-force of 1959: 0.45359237 kg x 9.80665 m/s2
        Unit<?> poundForce = Units.NEWTON.multiply(new BigDecimal("4.4482216152605"));
        Map<String, Unit<?>> units = new LinkedHashMap<>();
        units.put("Pa", Units.PASCAL);
        units.put("kPa", Units.PASCAL.multiply(1000));
        units.put("MPa", Units.PASCAL.multiply(1_000_000));
        units.put("bar", Units.PASCAL.multiply(100_000));
        units.put("psi", poundForce.divide(USCustomary.INCH.pow(2)));
        units.put("lb/ft2", poundForce.divide(USCustomary.FOOT.pow(2)));
        return units;
    }

    private static Map<String, Unit<?>> flowUnits() {
        Unit<?> litrePerMinute = Units.CUBIC_METRE.divide(1000).divide(Units.MINUTE);
        Unit<?> gallon = USCustomary.INCH.pow(3).multiply(231);
        Map<String, Unit<?>> units = new LinkedHashMap<>();
        units.put("L/min", litrePerMinute);
        units.put("L/s", litrePerMinute.multiply(60));
        units.put("m3/h", Units.CUBIC_METRE.divide(Units.HOUR));
        units.put("gpm", gallon.divide(Units.MINUTE));
        return units;
    }

    private static Map<String, Unit<?>> speedUnits() {
        Map<String, Unit<?>> units = new LinkedHashMap<>();
        units.put("m/s", Units.METRE_PER_SECOND);
        units.put("km/h", KILO(Units.METRE).divide(Units.HOUR));
        units.put("mph", USCustomary.MILE.divide(Units.HOUR));
        units.put("ft/s", USCustomary.FOOT.divide(Units.SECOND));
        return units;
    }

    private static Map<String, Unit<?>> densityUnits() {
        Map<String, Unit<?>> units = new LinkedHashMap<>();
        units.put("kg/m3", Units.KILOGRAM.divide(Units.CUBIC_METRE));
        units.put("lb/ft3", USCustomary.POUND.divide(USCustomary.FOOT.pow(3)));
        return units;
    }
}
