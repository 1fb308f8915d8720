package org.firmset.season.ask;

import java.util.List;
import java.util.Optional;
import org.firmset.season.result.PlannedHomestead;

/** What came of setting two plans side by side. */
public sealed interface Compared {

    /**
     * @param notes what else is to be told, in sentences: which change moved what, or how long it was looked
     * @param limited the plan with a limit to what a month may take, where that was asked for
     */
    record Plans(SideBySide plans, List<String> notes, Optional<PlannedHomestead> limited) implements Compared {
        public Plans {
            notes = List.copyOf(notes);
        }

        Plans(SideBySide plans, List<String> notes) {
            this(plans, notes, Optional.empty());
        }
    }

    /** @param why in a sentence */
    record Nothing(String why) implements Compared {}
}
