package org.firmset.trade.water;

/** How the toilets flush, and so what pressure the fixtures need while water runs: IPC Appendix E, E103.1. */
public enum FixtureGroup {
    FLUSH_TANK(8),
    FLUSH_VALVE(15);

    private final double psi;

    FixtureGroup(double psi) {
        this.psi = psi;
    }

    /** Least pressure at the highest fixture while it runs, in pascals. */
    public double leastPressure() {
        return psi * UsUnits.PSI;
    }
}
