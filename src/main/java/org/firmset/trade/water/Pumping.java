package org.firmset.trade.water;

/** Power and time of lifting water. */
public final class Pumping {
    private Pumping() {}

    /**
     * Power in watts that the water takes up: rho g Q H.
     *
     * @param flow in m3/s, 0 or more
     * @param head in metres, 0 or more
     * @param density in kg/m3, over 0
     */
    public static double hydraulicPower(double flow, double head, double density) {
        return Must.be0OrMore("flow", flow) * Water.pressure(Must.be0OrMore("head", head), density);
    }

    /**
     * Electrical power in watts.
     *
     * @param hydraulicPower in watts, 0 or more
     * @param efficiency of motor and pump together, over 0, at most 1
     */
    public static double electricalPower(double hydraulicPower, double efficiency) {
        Must.beOver0("efficiency", efficiency);
        return Must.be0OrMore("hydraulicPower", hydraulicPower) / Must.lie("efficiency", efficiency, 0, 1);
    }

    /**
     * Hours to move a volume.
     *
     * @param volume in m3, 0 or more
     * @param flow in m3/s, over 0
     */
    public static double hours(double volume, double flow) {
        return Must.be0OrMore("volume", volume) / Must.beOver0("flow", flow) / 3600;
    }
}
