package org.firmset.plan.explain;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Former;
import org.firmset.plan.Material;
import org.firmset.plan.Pin;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Stage;
import org.firmset.plan.Subproject;
import org.firmset.plan.Tool;
import org.firmset.plan.Trip;
import org.firmset.plan.Wait;

/**
 * One of the lists of a problem.
 *
 * @param key what names an entry; several entries may have it, as the pins of one stage do
 */
record Part<T>(
        Function<PlanningProblem.Parts, List<T>> read,
        BiConsumer<PlanningProblem.Parts, List<T>> write,
        Function<T, String> key) {
    static final Part<Trip> TRIPS = new Part<>(d -> d.trips, (d, list) -> d.trips = list, Trip::id);
    static final Part<Subproject> SUBPROJECTS =
            new Part<>(d -> d.subprojects, (d, list) -> d.subprojects = list, Subproject::id);
    static final Part<Stage> STAGES = new Part<>(d -> d.stages, (d, list) -> d.stages = list, Stage::id);
    static final Part<Wait> WAITS = new Part<>(d -> d.waits, (d, list) -> d.waits = list, Wait::id);
    static final Part<Material> MATERIALS = new Part<>(d -> d.materials, (d, list) -> d.materials = list, Material::id);
    static final Part<DeliveryOffer> OFFERS =
            new Part<>(d -> d.offers, (d, list) -> d.offers = list, DeliveryOffer::id);
    static final Part<Pin> PINS = new Part<>(d -> d.pins, (d, list) -> d.pins = list, Pin::stage);
    static final Part<Tool> TOOLS = new Part<>(d -> d.tools, (d, list) -> d.tools = list, Tool::id);
    static final Part<Former> FORMER = new Part<>(d -> d.former, (d, list) -> d.former = list, Former::stage);

    List<T> in(PlanningProblem.Parts draft) {
        return read.apply(draft);
    }

    Set<String> keys(PlanningProblem.Parts draft) {
        Set<String> keys = new LinkedHashSet<>();
        in(draft).forEach(each -> keys.add(key.apply(each)));
        return keys;
    }

    List<T> under(PlanningProblem.Parts draft, String wanted) {
        return in(draft).stream().filter(each -> key.apply(each).equals(wanted)).toList();
    }

    Optional<T> one(PlanningProblem.Parts draft, String wanted) {
        return under(draft, wanted).stream().findFirst();
    }

    /** Makes what the draft has under a key that which the goal has: more, other, or nothing. */
    void take(PlanningProblem.Parts draft, PlanningProblem.Parts goal, String wanted) {
        int place = place(draft, goal, wanted);
        List<T> list = new ArrayList<>(in(draft));
        list.removeIf(each -> key.apply(each).equals(wanted));
        list.addAll(place, under(goal, wanted));
        write.accept(draft, list);
    }

    /** Takes from the goal what the draft does not have at all. */
    void bring(PlanningProblem.Parts draft, PlanningProblem.Parts goal, Collection<String> wanted) {
        Set<String> known = keys(draft);
        keys(goal).stream()
                .filter(k -> wanted.contains(k) && !known.contains(k))
                .forEach(k -> take(draft, goal, k));
    }

    void remove(PlanningProblem.Parts draft, Predicate<T> which) {
        write.accept(draft, in(draft).stream().filter(which.negate()).toList());
    }

    void replace(PlanningProblem.Parts draft, UnaryOperator<T> how) {
        write.accept(draft, in(draft).stream().map(how).toList());
    }

    /** Orders the draft as the goal is ordered; what the goal does not know comes last. */
    void order(PlanningProblem.Parts draft, PlanningProblem.Parts goal) {
        if (sameEntries(in(draft), in(goal))) {
            write.accept(draft, in(goal));
            return;
        }
        List<String> order = List.copyOf(keys(goal));
        List<T> list = new ArrayList<>(in(draft));
        list.sort(Comparator.comparingInt(each -> rank(order.indexOf(key.apply(each)))));
        write.accept(draft, list);
    }

    private static int rank(int index) {
        return index < 0 ? Integer.MAX_VALUE : index;
    }

    private static <T> boolean sameEntries(List<T> some, List<T> others) {
        List<T> left = new ArrayList<>(others);
        return some.size() == others.size() && some.stream().allMatch(left::remove);
    }

    /** Where the draft has the key, or else behind the nearest entry that precedes it in the goal. */
    private int place(PlanningProblem.Parts draft, PlanningProblem.Parts goal, String wanted) {
        List<String> here = in(draft).stream().map(key).toList();
        int there = here.indexOf(wanted);
        if (there >= 0) {
            return there;
        }
        List<String> order = List.copyOf(keys(goal));
        List<String> before = order.subList(0, Math.max(0, order.indexOf(wanted)));
        for (String each : before.reversed()) {
            int last = here.lastIndexOf(each);
            if (last >= 0) {
                return last + 1;
            }
        }
        return 0;
    }
}
