package org.firmset.trade.cure;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.firmset.trade.trace.Finding;

/**
 * Why work may not simply go on.
 *
 * @param why in a few words: "the surface dries too fast"
 * @param measure what to do about it, one or two sentences
 */
record Reason(Verdict verdict, String why, String measure) {

    Finding finding() {
        return Finding.warning(Character.toUpperCase(why.charAt(0)) + why.substring(1) + ". " + measure);
    }

    /** "no-go: the concrete is too hot; the surface dries too fast", or "go". */
    static String words(List<Reason> reasons) {
        if (reasons.isEmpty()) {
            return Verdict.GO.words();
        }
        List<Reason> hardestFirst = reasons.stream()
                .sorted(Comparator.comparing(Reason::verdict).reversed())
                .toList();
        return hardestFirst.getFirst().verdict().words()
                + hardestFirst.stream().map(Reason::why).collect(Collectors.joining("; ", ": ", ""));
    }
}
