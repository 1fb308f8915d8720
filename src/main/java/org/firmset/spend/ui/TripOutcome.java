package org.firmset.spend.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.Optional;
import org.firmset.spend.Receipt;
import org.firmset.spend.TripCost;
import org.firmset.spend.TripReceipt;
import org.firmset.spend.ui.Bearers.Bearer;
import org.javamoney.moneta.Money;

/** What a trip comes to and what each stage bears of it, as its receipt will count. */
final class TripOutcome extends Div {
    private final Bearers bearers;

    TripOutcome(Bearers bearers) {
        this.bearers = bearers;
        addClassName("fs-trip-outcome");
        getElement().setAttribute("role", "status");
    }

    /** @param driveKnown whether the drive is in it */
    void show(Optional<TripReceipt> trip, boolean driveKnown) {
        removeAll();
        if (trip.isEmpty()) {
            add(new Paragraph("Write the days, and here stands what the trip comes to."));
            return;
        }
        Receipt receipt = trip.get().receipt();
        Paragraph sum = new Paragraph("Comes to " + Figures.show(receipt.sum())
                + (driveKnown ? "." : " without the drive," + " which is not filled in yet."));
        sum.addClassName("fs-comes-to");
        add(sum, lines(receipt), new H2("Who bears it"), new Paragraph(shared(trip.get())), borne(trip.get()));
    }

    private static UnorderedList lines(Receipt receipt) {
        UnorderedList list = new UnorderedList();
        receipt.lines().forEach(l -> list.add(row(l.text(), l.amount())));
        return list;
    }

    private static ListItem row(String name, Money amount) {
        Span figure = new Span(Figures.show(amount));
        figure.addClassName("fs-ledger-amount");
        return new ListItem(new Span(name), figure);
    }

    private static String shared(TripReceipt trip) {
        if (trip.parts().isEmpty()) {
            return "Nobody yet: say what the trip served, or leave it open and say so later on the receipt.";
        }
        if (trip.parts().size() == 1) {
            return "All of it by one.";
        }
        String words = "Shared " + trip.ruleUsed().words();
        return trip.ruleUsed() == trip.rule() ? words + "." : words + ", because " + missing(trip.rule()) + " written.";
    }

    private static String missing(TripCost.Rule asked) {
        return asked == TripCost.Rule.BY_MASS ? "no mass is" : "no hours are";
    }

    private UnorderedList borne(TripReceipt trip) {
        UnorderedList list = new UnorderedList();
        trip.borne().forEach(b -> list.add(row(bearers.words(bearer(b.part())), b.amount())));
        return list;
    }

    private static Bearer bearer(TripCost.Part part) {
        return new Bearer(part.subproject(), part.stage());
    }
}
