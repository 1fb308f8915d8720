package org.firmset.trade.cure;

import org.firmset.measure.Dimension;
import org.firmset.measure.Units;

/** Limits that are published in US units, exactly as a reader of "40 degF" or "15 mph" gets them. */
final class Imperial {
    private Imperial() {}

    /** In degrees Celsius. */
    static double fahrenheit(int degrees) {
        return Units.parse(Dimension.TEMPERATURE, degrees + " degF").amount();
    }

    /** In metres a second. */
    static double milesPerHour(int speed) {
        return Units.parse(Dimension.SPEED, speed + " mph").amount();
    }

    /** In metres. */
    static double inches(int length) {
        return Units.parse(Dimension.LENGTH, length + " in").amount();
    }
}
