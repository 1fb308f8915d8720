package org.firmset.trade.water;

/** Water in tanks of the usual shapes, in m3; lengths in metres, inside. */
public final class TankVolume {
    private TankVolume() {}

    /** @param diameter over 0; depth 0 or more */
    public static double upright(double diameter, double depth) {
        double d = Must.beOver0("diameter", diameter);
        return Math.PI / 4 * d * d * Must.be0OrMore("depth", depth);
    }

    /**
     * A cylinder on its side with flat ends.
     *
     * @param diameter over 0
     * @param length over 0
     * @param depth over its lowest line, 0 to the diameter
     */
    public static double lying(double diameter, double length, double depth) {
        double r = Must.beOver0("diameter", diameter) / 2;
        double y = Must.lie("depth", depth, 0, diameter);
        double segment = r * r * Math.acos((r - y) / r) - (r - y) * Math.sqrt(2 * r * y - y * y);
        return segment * Must.beOver0("length", length);
    }

    /** @param length over 0; width over 0; depth 0 or more */
    public static double box(double length, double width, double depth) {
        return Must.beOver0("length", length) * Must.beOver0("width", width) * Must.be0OrMore("depth", depth);
    }

    /**
     * An upright cylinder over a cone that ends in a point.
     *
     * @param diameter over 0
     * @param cone height of the cone, over 0
     * @param depth over the point, 0 or more
     */
    public static double coneBottom(double diameter, double cone, double depth) {
        double c = Must.beOver0("cone", cone);
        double inCone = Math.min(Must.be0OrMore("depth", depth), c);
        double wide = Must.beOver0("diameter", diameter) * inCone / c;
        return Math.PI / 12 * wide * wide * inCone + upright(diameter, depth - inCone);
    }
}
