package org.firmset.trade.climate;

/**
 * The normal distribution.
 *
 * @param mean in any unit
 * @param deviation standard deviation in the same unit, over 0
 */
public record Bell(double mean, double deviation) {
    public Bell {
        if (!Double.isFinite(mean) || !(deviation > 0 && deviation < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "mean [" + mean + "] must be a number and deviation [" + deviation + "] over 0");
        }
    }

    /** Odds of a value under a limit; good to a ten-millionth (Abramowitz and Stegun 26.2.17, from memory). */
    public double under(double limit) {
        double z = (limit - mean) / deviation;
        double tail = tail(Math.abs(z));
        return z < 0 ? tail : 1 - tail;
    }

    private static double tail(double z) {
        if (Double.isInfinite(z)) {
            return 0;
        }
        double t = 1 / (1 + 0.2316419 * z);
        double sum = t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return sum * Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
    }
}
