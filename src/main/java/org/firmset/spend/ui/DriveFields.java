package org.firmset.spend.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.firmset.homestead.Travel;
import org.firmset.measure.Length;
import org.firmset.spend.DriveWay;
import org.firmset.spend.DriveWords;
import org.firmset.spend.TripCost;

/** How the drive of a trip counts, and what that takes to be known. */
final class DriveFields extends Div {
    private final DriveWords words;
    private final RadioButtonGroup<DriveWay> way = new RadioButtonGroup<>("The drive counts");
    private final AmountField sum;
    private final EntryField distance;
    private final EntryField rate;
    private final EntryField use;
    private final EntryField price;
    private final Paragraph caution = new Paragraph();

    /** @param before what was typed the last time */
    DriveFields(Travel travel, DriveWords words, DriveWords.Typed before) {
        this.words = words;
        String mile = words.distanceUnit().equals("mi") ? "mile" : "km";
        String gallon = words.fuelUnit().equals("gal") ? "gallon" : "litre";
        sum = new AmountField("Drive, there and back", words.currency(), travel.costPerTrip());
        Length there = travel.distance();
        distance = new EntryField(
                "There and back, " + words.distanceUnit(),
                "distance",
                words.distanceUnit(),
                words.number(new Length(there.value().add(there.value()))));
        rate = new EntryField("Rate for a " + mile + ", " + words.currency(), "rate", "", before.rate());
        String asked = gallon.equals("gallon") ? "Miles on a gallon" : "Litres for 100 km";
        use = new EntryField(asked, "use", "", before.use());
        price = new EntryField("Price of a " + gallon + ", " + words.currency(), "price", "", before.price());
        way.setItems(DriveWay.values());
        way.setItemLabelGenerator(DriveWay::words);
        way.setValue(before.way());
        way.addValueChangeListener(e -> show());
        Div fields = new Div(sum, distance, rate, use, price);
        fields.addClassName("fs-trip-fields");
        caution.addClassName("fs-figure-note");
        add(way, fields, caution);
        show();
    }

    private void show() {
        Stream.of(sum, distance, rate, use, price).forEach(f -> f.setVisible(shown().contains(f)));
        caution.setText(caution(way.getValue()));
    }

    private List<Component> shown() {
        return switch (way.getValue()) {
            case SUM -> List.of(sum);
            case RATE -> List.of(distance, rate);
            case FUEL -> List.of(distance, use, price);
            case ON_RECEIPTS -> List.of();
        };
    }

    private static String caution(DriveWay way) {
        return switch (way) {
            case SUM ->
                "Begins with what is written at the drive under Place and kit, which may hold wear and tolls"
                        + " too. Keep no fuel receipts of this drive beside it.";
            case RATE ->
                "A rate holds fuel and wear: keep no fuel receipts of this drive beside it. Which rate is"
                        + " right for you or for a tax office is for you to find out; it stands on the receipt.";
            case FUEL -> "Fuel alone: wear is not in it. Keep no fuel receipts of this drive beside it.";
            case ON_RECEIPTS -> "Only tolls and food are written down here.";
        };
    }

    void onChange(Runnable changed) {
        Stream.<HasValue<?, ?>>of(way, sum, distance, rate, use, price)
                .forEach(f -> f.addValueChangeListener(e -> changed.run()));
    }

    /** As far as it can be read; empty while something is missing. */
    Optional<TripCost.Drive> peek() {
        Optional<Length> far = distance.peek(Length.class);
        return switch (way.getValue()) {
            case SUM -> sum.peek().map(words::sum);
            case RATE -> far.flatMap(d -> rate.peek(BigDecimal.class).map(r -> words.byRate(d, r)));
            case FUEL ->
                far.flatMap(d -> use.peek(BigDecimal.class)
                        .flatMap(u -> price.peek(BigDecimal.class).map(p -> words.byFuel(d, u, p))));
            case ON_RECEIPTS -> Optional.of(new TripCost.OnReceipts(words.currency()));
        };
    }

    /** Whether all that is asked for is there; marks the fields that are not right. */
    boolean check() {
        return switch (way.getValue()) {
            case SUM -> sum.check(true);
            case RATE -> distance.check(true) & rate.check(true);
            case FUEL -> distance.check(true) & use.check(true) & price.check(true);
            case ON_RECEIPTS -> true;
        };
    }
}
