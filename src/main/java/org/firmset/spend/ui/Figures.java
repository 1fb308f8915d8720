package org.firmset.spend.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;

/** Sums as people read them. */
final class Figures {
    private Figures() {}

    static String show(Money money) {
        return Cash.show(Cash.cents(money), money.getCurrency().getCurrencyCode());
    }

    static Div figure(String name, Money money) {
        return figure(name, show(money));
    }

    static Div figure(String name, String value) {
        Div label = new Div(new Span(name));
        label.addClassName("fs-figure-name");
        Div figure = new Div(new Span(value));
        figure.addClassName("fs-figure-value");
        return new Div(label, figure);
    }
}
