package org.firmset.season.money;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.firmset.homestead.SpendingLimit;
import org.firmset.season.words.Dates;
import org.firmset.season.words.WordTable;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** When which money is to be there, in sentences and tables. */
public final class TimeWords {
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM yyyy", Locale.ENGLISH);
    private final MoneyReport report;

    public TimeWords(MoneyReport report) {
        this.report = report;
    }

    /** What each trip takes, by what it is for; purposes that never come up have no column. */
    public WordTable cash() {
        List<CashNeed> needs = CashNeed.of(report);
        List<Purpose> purposes = Stream.of(Purpose.values())
                .filter(p -> needs.stream().anyMatch(n -> n.byPurpose().containsKey(p)))
                .toList();
        List<String> headings = new ArrayList<>(List.of("Trip"));
        purposes.forEach(p -> headings.add(
                p.words().substring(0, 1).toUpperCase(Locale.ROOT) + p.words().substring(1)));
        headings.addAll(List.of("In all", "With those before"));
        List<List<String>> rows = new ArrayList<>();
        for (CashNeed need : needs) {
            List<String> row = new ArrayList<>(List.of(name(need)));
            purposes.forEach(p -> {
                Money amount = need.byPurpose().get(p);
                row.add(amount == null ? WordTable.NONE : show(amount));
            });
            row.addAll(List.of(show(need.sum()), show(need.together())));
            rows.add(row);
        }
        return new WordTable("Cash needed by the end of each trip", headings, rows);
    }

    /** Says why a figure of {@link #cash} is less than nothing; empty when none is. */
    public Optional<String> soldAgain() {
        return CashNeed.of(report).stream()
                .map(n -> n.byPurpose().get(Purpose.TOOL))
                .filter(tools -> tools != null && tools.isNegative())
                .findFirst()
                .map(t -> "With a minus: more comes in than goes out, as a tool is sold again after its last trip.");
    }

    private static String name(CashNeed need) {
        MoneyReport.Leg trip = need.trip();
        return trip == null
                ? "After the last"
                : trip.number() + ", " + Dates.span(trip.first(), trip.last()) + " "
                        + trip.first().getYear();
    }

    /** The next trip in one sentence. */
    public String next() {
        return CashNeed.of(report).stream()
                .findFirst()
                .filter(n -> n.trip() != null)
                .map(n -> "For trip %s have %s ready: %s."
                        .formatted(
                                name(n),
                                show(n.sum()),
                                n.byPurpose().entrySet().stream()
                                        .map(e -> e.getKey().words() + " " + show(e.getValue()))
                                        .collect(Collectors.joining(", "))))
                .orElse("No trip is planned.");
    }

    /** Month by month; with the limit where there is one. */
    public WordTable months() {
        SpendingLimit limit = report.homestead().spendingLimit();
        List<String> headings = new ArrayList<>(List.of("Month", "Spent", "To be paid", "In all"));
        if (limit != null) {
            headings.add("Against " + show(limit.aMonth()) + " a month");
        }
        List<List<String>> rows = new ArrayList<>();
        for (MonthMoney month : MonthMoney.of(report)) {
            List<String> row = new ArrayList<>(
                    List.of(month(month.month()), show(month.spent()), show(month.coming()), show(month.sum())));
            if (limit != null) {
                row.add(MoneyWords.against(month.sum(), limit.aMonth()));
            }
            rows.add(row);
        }
        return new WordTable("Month by month", headings, rows);
    }

    /** Whether the limit is kept, or what the dearest month takes where there is none. */
    public String affordable() {
        List<MonthMoney> months = MonthMoney.of(report).stream()
                .filter(m -> !m.month().isBefore(YearMonth.from(report.today())))
                .toList();
        SpendingLimit limit = report.homestead().spendingLimit();
        if (limit == null) {
            return months.stream()
                    .max((a, b) -> a.sum().compareTo(b.sum()))
                    .map(m -> "No limit to what a month may take is written. The most comes in %s: %s."
                            .formatted(month(m.month()), show(m.sum())))
                    .orElse("Nothing is to be paid any more.");
        }
        List<MonthMoney> over =
                months.stream().filter(m -> m.over(limit).isPositive()).toList();
        return over.isEmpty()
                ? "Every month keeps within %s.".formatted(show(limit.aMonth()))
                : "Over %s a month: %s. The plan itself counts drives, packs, deliveries and fuel; tax, tools and permits come on top."
                        .formatted(
                                show(limit.aMonth()),
                                over.stream()
                                        .map(m -> month(m.month()) + " by " + show(m.over(limit)))
                                        .collect(Collectors.joining(", ")));
    }

    /** The drawn lines in figures: at the end of each month, today and on the last day. */
    public WordTable course(Course course) {
        TreeSet<LocalDate> days = new TreeSet<>(List.of(report.today()));
        Stream.of(course.planned(), course.real(), course.ahead())
                .flatMap(List::stream)
                .forEach(p -> days.add(YearMonth.from(p.on()).atEndOfMonth()));
        List<List<String>> rows = days.stream()
                .map(d -> List.of(
                        Dates.date(d) + (d.equals(report.today()) ? ", today" : ""),
                        course.planned().isEmpty() ? WordTable.NONE : sum(course.planned(), d),
                        d.isAfter(report.today()) ? WordTable.NONE : sum(course.real(), d),
                        d.isBefore(report.today()) ? WordTable.NONE : sum(course.ahead(), d)))
                .toList();
        return new WordTable(
                "The money added up over time",
                List.of("By", "As budgeted", "Really spent", "Spent and to be paid by the plan"),
                rows);
    }

    private String sum(List<Course.Point> line, LocalDate day) {
        return show(Course.on(line, day, report.budget().sum(i -> false)));
    }

    static String month(YearMonth month) {
        return MONTH.format(month);
    }

    private String show(@Nullable Money amount) {
        return amount == null ? WordTable.NONE : report.show(amount);
    }
}
