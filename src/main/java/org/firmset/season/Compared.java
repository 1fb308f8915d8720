package org.firmset.season;

import java.util.List;

/** What came of setting two plans side by side. */
public sealed interface Compared {

    /** @param notes what else is to be told, in sentences: which change moved what, or how long it was looked */
    record Plans(SideBySide plans, List<String> notes) implements Compared {
        public Plans {
            notes = List.copyOf(notes);
        }
    }

    /** @param why in a sentence */
    record Nothing(String why) implements Compared {}
}
