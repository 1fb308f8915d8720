package org.firmset.plan.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.firmset.plan.Rule;

/** Collects what is found, in the order in which it is found. */
final class Breaches {
    private final List<Breach> found = new ArrayList<>();

    void add(Rule rule, String sentence, Object... parts) {
        found.add(new Breach(rule, String.format(Locale.ROOT, sentence, parts)));
    }

    List<Breach> all() {
        return List.copyOf(found);
    }
}
