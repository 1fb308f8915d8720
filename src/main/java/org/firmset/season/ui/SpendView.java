package org.firmset.season.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Html;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.store.Homesteads;
import org.firmset.season.SeasonReport;
import org.firmset.season.Seasons;
import org.firmset.season.WordTable;
import org.firmset.season.money.Books;
import org.firmset.season.money.Course;
import org.firmset.season.money.MoneyReport;
import org.firmset.season.money.MoneyWords;
import org.firmset.season.money.MonthMoney;
import org.firmset.season.money.Purchases;
import org.firmset.season.money.ThingWords;
import org.firmset.season.money.TimeWords;
import org.firmset.season.store.Baselines;
import org.firmset.season.store.KeptBaseline;
import org.firmset.shell.Frame;
import org.firmset.spend.Forecast;
import org.firmset.spend.store.ReceiptBook;
import org.firmset.spend.ui.SpendPages;
import org.jspecify.annotations.Nullable;

/** Where the money went, what comes when, and where it will end. Each figure of money spent leads to its receipts. */
@Route(value = SpendPages.OVERVIEW, layout = Frame.class)
@PageTitle("Firmset: spend")
class SpendView extends SeasonPage {
    /** Columns whose figures come of receipts: spent and committed. */
    private static final Set<Integer> OF_RECEIPTS = Set.of(2, 3);

    private final ReceiptBook book;
    private final Baselines baselines;
    private final Set<String> unfolded = new HashSet<>();
    private Optional<UUID> against = Optional.empty();

    SpendView(Homesteads homesteads, Seasons seasons, ReceiptBook book, Baselines baselines) {
        super(homesteads, seasons);
        this.book = book;
        this.baselines = baselines;
        addClassName("fs-spend");
    }

    @Override
    void show(Homestead homestead, SeasonReport report) {
        opened().ifPresent(id -> {
            var planned = seasons().latest(id);
            if (planned.isEmpty()) {
                showAnewWhenPlanned();
                add(new H1("Spend"), new Paragraph("The plan is being made again; the money is reckoned in a moment."));
                return;
            }
            Purchases.Writer purchases = new Purchases.Writer(homestead.currency());
            book.each(id, kept -> purchases.add(kept.receipt()));
            show(
                    id,
                    MoneyReport.of(new Books(
                            planned.get().homestead(), planned.get().season(), purchases.done(), report.statusDate())));
        });
    }

    private void show(UUID id, MoneyReport money) {
        List<KeptBaseline> kept = baselines.all(id);
        Optional<KeptBaseline> chosen = kept.stream()
                .filter(k -> against.filter(k.id()::equals).isPresent())
                .findFirst()
                .or(() -> kept.stream().findFirst());
        MoneyWords words = new MoneyWords(money);
        Div links = new Div(
                new Anchor(ReceiptLinks.all(), "All receipts"),
                new Anchor("edit/budgeting", "How budgets are reckoned"),
                new Anchor("edit/spendingLimit", "Limit to what a month may take"));
        links.addClassNames("fs-buttons", "fs-no-print");
        Paragraph verdict = new Paragraph(words.verdict());
        verdict.addClassName("fs-proof");
        add(new H1("Spend"), verdict, links, glance(words), notes(words), drill(words));
        add(new BudgetPanel(money, kept, chosen, baselines, id, k -> {
            against = Optional.of(k);
            showAgain();
        }));
        add(course(money, chosen), cash(money), months(id, money), prices(money));
    }

    private static Component glance(MoneyWords words) {
        List<@Nullable String> bearers = words.bearers();
        return sums(new TablePanel(
                words.overview(),
                (row, column) -> !OF_RECEIPTS.contains(column)
                        ? Optional.empty()
                        : Optional.of(
                                row < bearers.size()
                                        ? ReceiptLinks.ofSubproject(bearers.get(row))
                                        : ReceiptLinks.all())));
    }

    private static TablePanel sums(TablePanel table) {
        table.addClassName("fs-sums");
        return table;
    }

    private static Component notes(MoneyWords words) {
        return list(words.notes());
    }

    static UnorderedList list(List<String> sentences) {
        UnorderedList list = new UnorderedList();
        sentences.forEach(s -> list.add(new ListItem(s)));
        return list;
    }

    static Section section(String title, Component... content) {
        Section section = new Section(new H2(title));
        section.add(content);
        section.addClassName("fs-block");
        return section;
    }

    /** Each subproject by stage and by what it was for; only what is opened is sent. */
    private Section drill(MoneyWords words) {
        Section section = section("Stage by stage");
        for (@Nullable String subproject : words.bearers()) {
            Details details = new Details(words.name(subproject));
            details.addOpenedChangeListener(e -> {
                String name = words.name(subproject);
                boolean changed = e.isOpened() ? unfolded.add(name) : unfolded.remove(name);
                if (e.isOpened() && (changed || details.getContent().findAny().isEmpty())) {
                    details.removeAll();
                    details.add(stages(words, subproject));
                }
            });
            // a better plan that comes in between folds nothing up
            details.setOpened(unfolded.contains(words.name(subproject)));
            section.add(details);
        }
        return section;
    }

    private static Component stages(MoneyWords words, @Nullable String subproject) {
        List<Forecast.Row> rows = words.rowsOf(subproject);
        TablePanel table = new TablePanel(
                words.drill(subproject),
                (row, column) -> isOfReceipts(rows.get(row), column)
                        ? Optional.of(ReceiptLinks.of(rows.get(row).of()))
                        : Optional.empty());
        table.addClassName("fs-stage-sums");
        return sums(table);
    }

    private static boolean isOfReceipts(Forecast.Row row, int column) {
        return OF_RECEIPTS.contains(column) && !(column == 2 ? row.spent() : row.committed()).isZero();
    }

    private static Section course(MoneyReport money, Optional<KeptBaseline> chosen) {
        Course course = chosen.map(k -> Course.of(money, k.budget())).orElseGet(() -> Course.of(money));
        Div frame = new Div(new Html(new CourseDrawing(course, money.today(), money.currency()).svg()));
        frame.addClassName("fs-drawing-frame");
        frame.getElement().setAttribute("tabindex", "0");
        Paragraph key = new Paragraph((chosen.isPresent() ? "Dashed: as it was budgeted. " : "")
                + "Thick: really spent. With dots: what is spent and what the plan still takes, paid day by day.");
        return section(
                "The money over time",
                key,
                frame,
                new Details("The same in figures", sums(new TablePanel(new TimeWords(money).course(course)))));
    }

    private static Section cash(MoneyReport money) {
        TimeWords words = new TimeWords(money);
        WordTable table = words.cash();
        Section section = section("Cash before each trip", new Paragraph(words.next()));
        if (!table.rows().isEmpty()) {
            section.add(sums(new TablePanel(table)));
        }
        return section;
    }

    private Section months(UUID id, MoneyReport money) {
        TimeWords words = new TimeWords(money);
        List<MonthMoney> months = MonthMoney.of(money);
        return section(
                "Can I afford it?",
                new Paragraph(words.affordable()),
                sums(new TablePanel(
                        words.months(),
                        (row, column) -> column == 1 && !months.get(row).spent().isZero()
                                ? Optional.of(
                                        ReceiptLinks.ofMonth(months.get(row).month()))
                                : Optional.empty())),
                new MonthLimitPanel(seasons(), id, money));
    }

    private static Section prices(MoneyReport money) {
        ThingWords words = new ThingWords(money);
        Section section = section(
                "Prices, tools and what lies on site",
                new RisePanel(money),
                new Details("Latest prices, and how they moved", new TablePanel(words.prices())));
        List<String> tools = words.tools();
        section.add(new H2("Hire or buy"));
        section.add(
                tools.isEmpty()
                        ? new Paragraph(
                                "No tool that the plan uses has a cost. Write it at a tool on Place and kit when"
                                        + " it is still to be bought or hired.")
                        : list(tools));
        WordTable left = words.leftOver();
        if (!left.rows().isEmpty()) {
            section.add(new H2(left.title()), new TablePanel(left));
        }
        return section;
    }
}
