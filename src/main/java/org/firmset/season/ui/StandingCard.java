package org.firmset.season.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.firmset.measure.Cash;
import org.firmset.season.money.MoneyReport;
import org.firmset.season.money.MoneyWords;
import org.firmset.season.money.MoneyWords.Standing;
import org.firmset.spend.Forecast;
import org.firmset.spend.ReceiptFilter;
import org.javamoney.moneta.Money;

/** A subproject at a glance, or all of them: a bar of what is spent, committed and still to pay, beside what may be spent. */
final class StandingCard extends Section {
    private final Standing standing;
    private final MoneyReport money;

    private StandingCard(Standing standing, MoneyReport money, MoneyWords words, Money scale) {
        this.standing = standing;
        this.money = money;
        addClassName("fs-glance");
        add(new H3(standing.name()));
        if (!standing.isWhole()) {
            add(new Paragraph(sentence()));
        }
        add(bar(scale), parts(words));
    }

    /** All of them, the whole first; their bars have one scale among them, that of the whole has its own. */
    static Div cards(MoneyReport money) {
        MoneyWords words = new MoneyWords(money);
        StandingCard whole =
                new StandingCard(words.together(), money, words, scale(List.of(words.together()), money.currency()));
        whole.addClassName("fs-glance-whole");
        Div cards = new Div(whole);
        Money scale = scale(words.standings(), money.currency());
        words.standings().forEach(s -> cards.add(new StandingCard(s, money, words, scale)));
        cards.addClassName("fs-glances");
        return cards;
    }

    /** What a bar of full length is worth; more than nothing. */
    private static Money scale(List<Standing> standings, String currency) {
        return standings.stream()
                .flatMap(s -> Stream.of(
                        length(s.row()),
                        Objects.requireNonNullElse(s.allowed(), s.row().spent())))
                .max(Comparator.naturalOrder())
                .filter(Money::isPositive)
                .orElse(Cash.ofCents(1, currency));
    }

    /** What its bar is worth: what came back of a return may be more than was spent, and takes nothing off the bar. */
    private static Money length(Forecast.Row row) {
        return Stream.of(row.spent(), row.committed(), row.toBuy())
                .filter(Money::isPositive)
                .reduce(row.spent().subtract(row.spent()), Money::add);
    }

    private String sentence() {
        Money expected = standing.row().expected();
        Money allowed = standing.allowed();
        String begin = "Expected " + money.show(expected);
        if (allowed == null) {
            return begin + ".";
        }
        return expected.isEqualTo(allowed)
                ? begin + ", just what may be spent."
                : "%s: %s what may be spent."
                        .formatted(begin, standing.against().orElseThrow());
    }

    /** Says nothing that the words beside it do not say. */
    private Component bar(Money scale) {
        Div bar = new Div(
                part("fs-spent", standing.row().spent(), scale),
                part("fs-committed", standing.row().committed(), scale),
                part("fs-to-pay", standing.row().toBuy(), scale));
        if (standing.allowed() != null) {
            Span mark = new Span();
            mark.addClassName("fs-allowed");
            mark.getStyle().set("inset-inline-start", percent(standing.allowed(), scale));
            bar.add(mark);
        }
        bar.addClassName("fs-glance-bar");
        bar.getElement().setAttribute("aria-hidden", "true");
        return bar;
    }

    private static Span part(String className, Money amount, Money scale) {
        Span part = new Span();
        part.addClassName(className);
        part.getStyle().set("width", amount.isNegative() ? "0" : percent(amount, scale));
        return part;
    }

    private static String percent(Money amount, Money scale) {
        double share = amount.getNumber().doubleValue() / scale.getNumber().doubleValue();
        return String.format(Locale.ROOT, "%.2f%%", 100 * share);
    }

    private Component parts(MoneyWords words) {
        DescriptionList list = new DescriptionList();
        ReceiptFilter all = standing.isWhole() ? ReceiptFilter.ALL : ReceiptLinks.of(standing.subproject());
        part(list, "fs-spent", "Spent", link("spent", standing.row().spent(), ReceiptLinks.to(all)));
        part(
                list,
                "fs-committed",
                "Committed",
                link("committed", standing.row().committed(), ReceiptLinks.toOrders(all)));
        part(
                list,
                "fs-to-pay",
                "Still to pay",
                new Span(money.show(standing.row().toBuy())));
        part(list, "fs-no-swatch", "Low to high", new Span(words.lowToHigh(standing.row())));
        Money allowed = standing.allowed();
        if (allowed != null) {
            part(list, "fs-allowed", "May be spent", new Span(money.show(allowed)));
        }
        return list;
    }

    private static void part(DescriptionList list, String swatch, String name, Component value) {
        Span sign = new Span();
        sign.addClassNames("fs-swatch", swatch);
        list.add(new DescriptionList.Term(sign, new Span(name)), new DescriptionList.Description(value));
    }

    private Component link(String what, Money amount, String address) {
        if (amount.isZero()) {
            return new Span(money.show(amount));
        }
        Anchor link = new Anchor(address, money.show(amount));
        link.setAriaLabel("%s, %s %s: its receipts".formatted(standing.name(), what, money.show(amount)));
        return link;
    }
}
