package org.firmset.season.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Html;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Function;
import org.firmset.season.Seasons;
import org.firmset.season.money.Course;
import org.firmset.season.money.MoneyReport;
import org.firmset.season.money.MoneyWords;
import org.firmset.season.money.MonthMoney;
import org.firmset.season.money.ThingWords;
import org.firmset.season.money.TimeWords;
import org.firmset.season.result.PlannedHomestead;
import org.firmset.season.result.SeasonReport;
import org.firmset.season.store.Baselines;
import org.firmset.season.store.KeptBaseline;
import org.firmset.season.store.KeptBudgets;
import org.firmset.season.words.WordTable;
import org.firmset.spend.ReceiptFilter;
import org.firmset.spend.ui.SpendPages;

/** The sections of the page of money. What is typed and unfolded stays while the sums around it are made anew. */
final class SpendSections extends Div {
    private final Baselines baselines;
    private final UUID homestead;
    private final Consumer<UUID> choose;
    private final Unfolded unfolded = new Unfolded();
    private final Paragraph verdict = new Paragraph();
    private final Div stand = new Div();
    private final Div beforeMonths = new Div();
    private final Div months = new Div();
    private final Div afterPrices = new Div();
    private final MonthLimitPanel limit;
    private final RisePanel rise;

    /**
     * @param reckon the money of another plan of the homestead
     * @param choose is told which kept budget to hold the money against
     */
    SpendSections(
            Seasons seasons,
            Baselines baselines,
            UUID homestead,
            MoneyReport money,
            Function<PlannedHomestead, MoneyReport> reckon,
            Consumer<UUID> choose) {
        this.baselines = baselines;
        this.homestead = homestead;
        this.choose = choose;
        limit = new MonthLimitPanel(seasons, homestead, reckon);
        rise = new RisePanel(money);
        verdict.addClassName("fs-proof");
        add(new H1("Spend"), verdict, links(), new SpendIndex(), stand, beforeMonths);
        add(section(SpendIndex.AFFORD, months, limit));
        add(section(SpendIndex.PRICES, rise, afterPrices));
    }

    private static Div links() {
        Div links = new Div(
                new Anchor(ReceiptLinks.to(ReceiptFilter.ALL), "All receipts"),
                new Anchor(SpendPages.TRIP, "Write down a trip that was made"),
                new Anchor("edit/budgeting", "How budgets are reckoned"),
                new Anchor("edit/spendingLimit", "Limit to what a month may take"));
        links.addClassNames("fs-buttons", "fs-no-print");
        return links;
    }

    /** @param chosen the budget to hold the money against; empty when none is kept */
    void show(MoneyReport money, SeasonReport plan, KeptBudgets kept, Optional<KeptBaseline> chosen) {
        verdict.setText(new MoneyWords(money).verdict());
        anew(stand, new StandPanel(money, unfolded));
        anew(
                beforeMonths,
                new BudgetPanel(money, kept, chosen, baselines, homestead, unfolded, choose),
                course(money, chosen),
                cash(money));
        months(money);
        limit.show(money, plan);
        rise.show(money);
        prices(money);
    }

    private static void anew(Div place, Component... content) {
        place.removeAll();
        place.add(content);
    }

    static TablePanel sums(TablePanel table) {
        table.addClassName("fs-sums");
        return table;
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
        section.setId(SpendIndex.id(title));
        return section;
    }

    private Section course(MoneyReport money, Optional<KeptBaseline> chosen) {
        Course course = chosen.map(k -> Course.of(money, k.budget())).orElseGet(() -> Course.of(money));
        Div frame = new Div(new Html(new CourseDrawing(course, money.today(), money.currency()).svg()));
        frame.addClassName("fs-drawing-frame");
        frame.getElement().setAttribute("tabindex", "0");
        Paragraph key = new Paragraph((chosen.isPresent() ? "Dashed: as it was budgeted. " : "")
                + "Thick: really spent. With dots: what is spent and what the plan still takes, paid day by day.");
        return section(
                SpendIndex.OVER_TIME,
                key,
                frame,
                unfolded.details(
                        "course",
                        "The same in figures",
                        () -> sums(new TablePanel(new TimeWords(money).course(course)))));
    }

    private Section cash(MoneyReport money) {
        TimeWords words = new TimeWords(money);
        WordTable table = words.cash();
        Anchor home = new Anchor(SpendPages.TRIP, "Write down what it cost");
        home.addClassName("fs-no-print");
        Paragraph after = new Paragraph(new Span("Home again? "), home, new Span(": then it counts as spent."));
        Section section = section(SpendIndex.CASH, new Paragraph(words.next()), after);
        if (!table.rows().isEmpty()) {
            section.add(unfolded.details("cash", "Trip by trip, in figures", () -> cash(table, words)));
        }
        return section;
    }

    private static Component cash(WordTable table, TimeWords words) {
        Div content = new Div(sums(new TablePanel(table)));
        words.soldAgain().map(Paragraph::new).ifPresent(content::add);
        return content;
    }

    private void months(MoneyReport money) {
        TimeWords words = new TimeWords(money);
        List<MonthMoney> all = MonthMoney.of(money);
        anew(
                months,
                new Paragraph(words.affordable()),
                sums(new TablePanel(
                        words.months(),
                        (row, column) -> column == 1 && !all.get(row).spent().isZero()
                                ? Optional.of(ReceiptLinks.to(
                                        ReceiptFilter.ALL.withMonth(all.get(row).month())))
                                : Optional.empty())));
    }

    private void prices(MoneyReport money) {
        ThingWords words = new ThingWords(money);
        anew(
                afterPrices,
                unfolded.details("prices", "Latest prices, and how they moved", () -> new TablePanel(words.prices())));
        List<String> tools = words.tools();
        afterPrices.add(new H2("Hire or buy"));
        afterPrices.add(
                tools.isEmpty()
                        ? new Paragraph(
                                "No tool that the plan uses has a cost. Write it at a tool on Place and kit when"
                                        + " it is still to be bought or hired.")
                        : list(tools));
        WordTable left = words.leftOver();
        if (!left.rows().isEmpty()) {
            afterPrices.add(new H2(left.title()), new TablePanel(left));
        }
    }
}
