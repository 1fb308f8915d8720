package org.firmset.homestead.takeoff;

import java.util.List;
import org.firmset.trade.trace.Worksheet;

/** What came of working out a takeoff. */
public sealed interface Worked {

    record Done(Worksheet worksheet) implements Worked {}

    /** @param faults at least one */
    record Refused(List<InputFault> faults) implements Worked {
        public Refused {
            faults = List.copyOf(faults);
        }
    }
}
