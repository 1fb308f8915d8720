package org.firmset.season.ui;

import com.vaadin.flow.component.Component;

/** How figures of a table were made: told under their row when one of them is opened. */
interface Making {
    /** Whether a figure opens, or the name of the row. @param column from 0, the name of the row being the first */
    boolean opens(int row, int column);

    /** What is told under the row; asked for once it is opened. */
    Component of(int row);

    /** Of a row, its own on the page and the same when the table is made anew. */
    String key(int row);
}
