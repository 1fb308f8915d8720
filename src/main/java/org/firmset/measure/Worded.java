package org.firmset.measure;

/** A choice that people know by other words than the name of its constant: "#4", "8 x 8 x 16 in". */
public interface Worded {
    String words();
}
