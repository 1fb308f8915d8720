package org.firmset.homestead.file;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.firmset.homestead.AddedDate;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.OpenRule;

/** Open dates are in order, and somebody comes. */
final class CalendarRules {
    private static final int LONGEST_YEARS = 10;

    private CalendarRules() {}

    static List<Fault> faults(Homestead homestead) {
        List<Fault> faults = new ArrayList<>();
        List<OpenRule> rules = homestead.openDates().rules();
        for (int i = 0; i < rules.size(); i++) {
            check(rules.get(i), "/openDates/rules/" + i, faults);
        }
        Set<LocalDate> seen = new HashSet<>();
        List<AddedDate> added = homestead.openDates().added();
        for (int i = 0; i < added.size(); i++) {
            String pointer = "/openDates/added/" + i;
            if (!seen.add(added.get(i).date())) {
                faults.add(new Fault(
                        pointer + "/date",
                        added.get(i).date().toString(),
                        "was added before",
                        "Write each added date once"));
            }
            somebodyComes(added.get(i).people(), pointer, faults);
        }
        return faults;
    }

    private static void check(OpenRule rule, String pointer, List<Fault> faults) {
        if (rule.to().isBefore(rule.from())) {
            faults.add(new Fault(
                    pointer + "/to",
                    rule.to().toString(),
                    "is before the first date " + rule.from(),
                    "Write the later date as the last"));
        }
        if (rule.to().isAfter(rule.from().plusYears(LONGEST_YEARS))) {
            faults.add(new Fault(
                    pointer + "/to",
                    rule.to().toString(),
                    "is more than " + LONGEST_YEARS + " years after the first date",
                    "Write a nearer date"));
        }
        if (rule.weekdays().isEmpty()) {
            faults.add(
                    new Fault(pointer + "/weekdays", "", "names no weekday", "Write at least one, such as saturday"));
        }
        somebodyComes(rule.people(), pointer, faults);
    }

    private static void somebodyComes(List<String> people, String pointer, List<Fault> faults) {
        if (people.isEmpty()) {
            faults.add(new Fault(pointer + "/people", "", "names nobody", "Write the key of at least one person"));
        }
        if (new HashSet<>(people).size() < people.size()) {
            faults.add(new Fault(
                    pointer + "/people", String.join(", ", people), "names somebody twice", "Write each person once"));
        }
    }
}
