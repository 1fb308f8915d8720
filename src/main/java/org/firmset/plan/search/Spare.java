package org.firmset.plan.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds waits that go without saying, because a chain of others takes as long. They change no plan, only the time that
 * planning takes, so they are looked for only where there are very many waits.
 */
final class Spare {
    private static final int MANY = 5_000;
    private static final int NO_WAY = -1;

    private final Model model;
    private final List<Link> links;
    private final List<List<Link>> after = new ArrayList<>();
    private final List<Integer> order = new ArrayList<>();

    private Spare(Model model, List<Link> links) {
        this.model = model;
        this.links = links;
    }

    /** The links without those that go without saying; all of them where there are few, or where some go in a circle. */
    static List<Link> leftOut(Model model, List<Link> links) {
        return links.size() < MANY ? links : new Spare(model, links).needed();
    }

    private List<Link> needed() {
        int[] open = new int[model.stageCount];
        for (int s = 0; s < model.stageCount; s++) {
            after.add(new ArrayList<>());
        }
        for (Link link : links) {
            after.get(link.from).add(link);
            open[link.to]++;
        }
        sort(open);
        if (order.size() < model.stageCount) {
            return links;
        }
        boolean[] spare = new boolean[model.problem.waits().size()];
        for (int s = 0; s < model.stageCount; s++) {
            if (!model.stage(s).finished()) {
                markAfter(s, spare);
            }
        }
        return links.stream().filter(l -> !spare[l.wait]).toList();
    }

    private void sort(int[] open) {
        for (int s = 0; s < open.length; s++) {
            if (open[s] == 0) {
                order.add(s);
            }
        }
        for (int i = 0; i < order.size(); i++) {
            for (Link link : after.get(order.get(i))) {
                if (--open[link.to] == 0) {
                    order.add(link.to);
                }
            }
        }
    }

    /** Of several links to the same stage that take the longest way there is, the first stays. */
    private void markAfter(int from, boolean[] spare) {
        int[] longest = new int[model.stageCount];
        int[] oneStep = new int[model.stageCount];
        Arrays.fill(longest, NO_WAY);
        Arrays.fill(oneStep, NO_WAY);
        longest[from] = 0;
        for (int s : order) {
            // what comes before a finished stage holds nothing back any more
            if (longest[s] == NO_WAY || model.stage(s).finished()) {
                continue;
            }
            for (Link link : after.get(s)) {
                if (link.isFixed()) {
                    int days = (int) Math.min((long) longest[s] + link.fixedDays(), Link.NEVER);
                    longest[link.to] = Math.max(longest[link.to], days);
                    oneStep[link.to] = s == from ? Math.max(oneStep[link.to], days) : oneStep[link.to];
                }
            }
        }
        boolean[] roundabout = roundabout(from, longest);
        boolean[] kept = new boolean[model.stageCount];
        for (Link link : after.get(from)) {
            if (isPlain(link)) {
                boolean first = !kept[link.to] && link.fixedDays() == oneStep[link.to];
                spare[link.wait] = !first || roundabout[link.to];
                kept[link.to] |= first;
            }
        }
    }

    /** For each stage whether a way over another stage takes as long as the longest way there. */
    private boolean[] roundabout(int from, int[] longest) {
        boolean[] result = new boolean[model.stageCount];
        for (int s : order) {
            if (s != from && longest[s] != NO_WAY && !model.stage(s).finished()) {
                for (Link link : after.get(s)) {
                    result[link.to] |= link.isFixed() && (long) longest[s] + link.fixedDays() >= longest[link.to];
                }
            }
        }
        return result;
    }

    /** Takes the same days always, and has no longest that any plan could miss. */
    private boolean isPlain(Link link) {
        return link.isFixed()
                && (!link.hasMost()
                        || model.dayCount() == 0
                        || link.source.mostDays() >= (long) model.dayEpoch[model.dayCount() - 1] - model.dayEpoch[0]);
    }
}
