package org.firmset.homestead.file;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.firmset.homestead.Cure;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Stage;
import org.firmset.homestead.Wait;
import org.jspecify.annotations.Nullable;

/** Waits do not contradict themselves and lead in no circle. */
final class WaitRules {
    private static final int MOST_TOLD = 30;

    private final Homestead homestead;
    private final List<Fault> faults = new ArrayList<>();

    private WaitRules(Homestead homestead) {
        this.homestead = homestead;
    }

    /** Needs all references to be sound. */
    static List<Fault> faults(Homestead homestead) {
        WaitRules rules = new WaitRules(homestead);
        for (int i = 0; i < homestead.waits().size(); i++) {
            rules.check(homestead.waits().get(i), "/waits/" + i);
        }
        rules.checkCircle();
        return rules.faults;
    }

    private void check(Wait wait, String pointer) {
        if (wait.from().equals(wait.to())) {
            faults.add(
                    new Fault(pointer + "/to", wait.to(), "is the stage before as well", "Name two different stages"));
        }
        if (wait.mostDays() != null && wait.mostDays() < wait.leastDays()) {
            faults.add(new Fault(
                    pointer + "/mostDays",
                    wait.mostDays().toString(),
                    "is under the least days " + wait.leastDays(),
                    "Write at least " + wait.leastDays()));
        }
        checkCurve(wait, pointer);
        if (wait.cure() != null && homestead.place().climate().isEmpty()) {
            faults.add(new Fault(
                    pointer + "/cure",
                    wait.cure().strengthPercent() + " %",
                    "cannot be reckoned without the temperatures of the place",
                    "Write the twelve months in /place/climate, or leave the cure out and use leastDays"));
        }
    }

    private void checkCurve(Wait wait, String pointer) {
        @Nullable Cure cure = wait.cure();
        if (cure != null && cure.curve().isEmpty()) {
            faults.add(new Fault(
                    pointer + "/cure/method",
                    cure.method().words(),
                    "has no curve for " + cure.cement().name().toLowerCase(Locale.ROOT) + " cement",
                    "Write en-1992 as the method, or another cement"));
        }
    }

    private void checkCircle() {
        List<String> circle = new CircleSearch(homestead.waits()).find();
        if (!circle.isEmpty()) {
            Map<String, String> names =
                    homestead.stages().stream().collect(Collectors.toMap(Stage::key, Stage::name, (a, b) -> a));
            faults.add(new Fault(
                    "/waits",
                    "",
                    "lead in a circle, so none of these can ever start: " + told(circle, names),
                    "Take out or turn round one of the waits between them"));
        }
    }

    private static String told(List<String> circle, Map<String, String> names) {
        List<String> stages = circle.stream()
                .map(k -> names.getOrDefault(k, k) + " (" + k + ")")
                .toList();
        if (stages.size() <= MOST_TOLD) {
            return String.join(", then ", stages);
        }
        int left = stages.size() - MOST_TOLD;
        return String.join(", then ", stages.subList(0, MOST_TOLD - 1)) + ", then " + left + " more, then "
                + stages.getLast();
    }

    /** Depth-first without recursion: a long chain in a hostile file must not exhaust the stack. */
    private static final class CircleSearch {
        private final Map<String, List<String>> after = new HashMap<>();
        private final Set<String> finished = new HashSet<>();

        CircleSearch(List<Wait> waits) {
            for (Wait wait : waits) {
                if (!wait.from().equals(wait.to())) {
                    after.computeIfAbsent(wait.from(), k -> new ArrayList<>()).add(wait.to());
                }
            }
        }

        /** The stages of one circle in order, the first named again at the end; empty when there is none. */
        List<String> find() {
            for (String start : after.keySet().stream().sorted().toList()) {
                List<String> circle = from(start);
                if (!circle.isEmpty()) {
                    return circle;
                }
            }
            return List.of();
        }

        private List<String> from(String start) {
            Deque<String> open = new ArrayDeque<>(List.of(start));
            List<String> path = new ArrayList<>();
            Set<String> onPath = new HashSet<>();
            while (!open.isEmpty()) {
                String stage = open.peek();
                if (finished.contains(stage)) {
                    open.pop();
                } else if (onPath.add(stage)) {
                    path.add(stage);
                    for (String next : after.getOrDefault(stage, List.of())) {
                        if (onPath.contains(next)) {
                            List<String> circle = new ArrayList<>(path.subList(path.indexOf(next), path.size()));
                            circle.add(next);
                            return circle;
                        }
                        if (!finished.contains(next)) {
                            open.push(next);
                        }
                    }
                } else {
                    open.pop();
                    path.removeLast();
                    onPath.remove(stage);
                    finished.add(stage);
                }
            }
            return List.of();
        }
    }
}
