package org.firmset.trade.water;

import java.util.function.DoubleUnaryOperator;

/** Where a rising function is 0: the method of Ridders 1979, which never leaves the bracket and halves it at least. */
final class Root {
    /** As a share of the first bracket; flows are read to three digits. */
    private static final double EXACT = 1e-11;

    private static final int ENOUGH = 100;

    private Root() {}

    /** @return an end of the bracket when the function is not under 0 at the low end, or not over 0 at the high end */
    static double of(DoubleUnaryOperator rising, double low, double high) {
        double a = low;
        double b = high;
        double fa = rising.applyAsDouble(a);
        double fb = rising.applyAsDouble(b);
        if (fa >= 0 || fb <= 0) {
            return fa >= 0 ? low : high;
        }
        double x = low;
        for (int i = 0; i < ENOUGH; i++) {
            double middle = (a + b) / 2;
            double fm = rising.applyAsDouble(middle);
            double next = middle - (middle - a) * fm / Math.sqrt(fm * fm - fa * fb);
            double fx = rising.applyAsDouble(next);
            if (fx == 0 || Math.abs(next - x) <= EXACT * (high - low)) {
                return next;
            }
            x = next;
            boolean over = fx > 0;
            double left = fm < 0 ? middle : a;
            double right = fm < 0 ? b : middle;
            double fLeft = fm < 0 ? fm : fa;
            double fRight = fm < 0 ? fb : fm;
            a = over ? left : x;
            fa = over ? fLeft : fx;
            b = over ? x : right;
            fb = over ? fx : fRight;
        }
        return x;
    }
}
