package org.firmset.homestead.file;

import java.util.List;
import org.firmset.homestead.Homestead;

/** What came of reading a homestead file: all of it or nothing. */
public sealed interface Reading {

    record Accepted(Homestead homestead) implements Reading {}

    /** @param faults at least one, in the order of the file */
    record Refused(List<Fault> faults) implements Reading {
        public Refused {
            faults = List.copyOf(faults);
        }
    }
}
