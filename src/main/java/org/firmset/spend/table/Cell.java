package org.firmset.spend.table;

import org.firmset.homestead.file.Fault;

/**
 * One cell of a table.
 *
 * @param line where its row begins, from 1
 * @param heading of its column
 */
record Cell(long line, String heading, String text) {
    String place() {
        return "line " + line + ", column '" + heading + "'";
    }

    Fault fault(String problem, String remedy) {
        return new Fault(place(), text, problem, remedy);
    }
}
