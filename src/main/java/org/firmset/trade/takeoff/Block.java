package org.firmset.trade.takeoff;

import org.firmset.measure.Worded;
import org.firmset.trade.trace.Source;

/**
 * Two-core concrete blocks by their nominal width. The geometry is that of the least face-shell and web thickness which
 * ASTM C90-06 allows; real blocks taper and hold 10 to 15 % less.
 */
public enum Block implements Worded {
    IN_6(6, 1, 1),
    IN_8(8, 1.25, 1),
    IN_10(10, 1.375, 1.125),
    IN_12(12, 1.5, 1.125),
    /** 190 x 190 x 390 mm on a 10 mm joint, with the shells of the 8 in block. */
    MM_190(0, 1.25, 1);

    private static final double METRES_PER_INCH = 0.0254;
    private static final double METRIC_MODULE = 0.2;
    private static final double METRIC_JOINT = 0.01;

    private final int nominalInches;
    private final double shellInches;
    private final double webInches;

    Block(int nominalInches, double shellInches, double webInches) {
        this.nominalInches = nominalInches;
        this.shellInches = shellInches;
        this.webInches = webInches;
    }

    private boolean isMetric() {
        return nominalInches == 0;
    }

    /** Width of the wall with its joint in metres. */
    public double nominalWidth() {
        return isMetric() ? METRIC_MODULE : nominalInches * METRES_PER_INCH;
    }

    /** Length with one joint in metres. */
    public double nominalLength() {
        return isMetric() ? 2 * METRIC_MODULE : 16 * METRES_PER_INCH;
    }

    /** Height of a course with its joint in metres. */
    public double course() {
        return isMetric() ? METRIC_MODULE : 8 * METRES_PER_INCH;
    }

    /** Thickness of a joint in metres. */
    public double joint() {
        return isMetric() ? METRIC_JOINT : 0.375 * METRES_PER_INCH;
    }

    public double width() {
        return nominalWidth() - joint();
    }

    public double length() {
        return nominalLength() - joint();
    }

    /** Least thickness of a face shell in metres. */
    public double shell() {
        return shellInches * METRES_PER_INCH;
    }

    /** Least thickness of each of three webs in metres. */
    public double web() {
        return webInches * METRES_PER_INCH;
    }

    Source source() {
        return this == IN_8 ? Sources.BLOCK_GEOMETRY : Sources.BLOCK_GEOMETRY_MEMORY;
    }

    /** As people say it. */
    @Override
    public String words() {
        return isMetric() ? "190 x 190 x 390 mm" : nominalInches + " x 8 x 16 in";
    }
}
