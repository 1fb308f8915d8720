package org.firmset.spend.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.firmset.homestead.Budgeting;
import org.firmset.homestead.OpenTrip;
import org.firmset.homestead.TripSharing;
import org.firmset.measure.Cash;
import org.firmset.measure.UnitSystem;
import org.firmset.season.money.Changed;
import org.firmset.spend.DriveWay;
import org.firmset.spend.LineKind;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.ReceiptState;
import org.firmset.spend.Share;
import org.firmset.spend.ui.Bearers.Bearer;
import org.junit.jupiter.api.Test;

/** The page on which a trip that was made is written down. The demo drives 93 mi one way, 135 a trip, 38 a day. */
class TripPageTest extends SpendPagesWithoutBrowser {
    private static final Bearer TRACK = new Bearer("water", "water-track");
    private static final Bearer TOPSOIL = new Bearer("shop", "shop-topsoil");
    /** Days that are past whenever the test runs. */
    private final LocalDate last = LocalDate.now().minusDays(3);

    private final LocalDate first = last.minusDays(1);

    private void go() {
        navigate(SpendPages.TRIP, Div.class);
        day("First day").setValue(first);
        day("Last day").setValue(last);
    }

    private DatePicker day(String caption) {
        return find(DatePicker.class).withCaption(caption).single();
    }

    @SuppressWarnings("unchecked")
    private void counts(DriveWay way) {
        RadioButtonGroup<DriveWay> group = find(RadioButtonGroup.class).single();
        group.setValue(way);
    }

    /** The stages that are offered make room for these. */
    @SuppressWarnings("unchecked")
    private void served(Bearer... bearers) {
        while (find(Button.class).withText("Not for this").all().size() > 1) {
            test(find(Button.class).withText("Not for this").all().getFirst()).click();
        }
        for (int i = 1; i < bearers.length; i++) {
            press("It served another, too");
        }
        for (int i = 0; i < bearers.length; i++) {
            ComboBox<Bearer> box = find(ComboBox.class).withCaption("For").all().get(i);
            box.setValue(bearers[i]);
        }
    }

    private void worked(String caption, String... sizes) {
        for (int i = 0; i < sizes.length; i++) {
            test(find(TextField.class).withCaption(caption).all().get(i)).setValue(sizes[i]);
        }
    }

    private Receipt kept() {
        return book.all(place).getFirst().receipt();
    }

    @Test
    void what_is_written_of_the_drive_is_filled_in_and_kept_with_one_press() {
        go();
        assertThat(field("Drive, there and back").getValue()).isEqualTo("135.00");
        assertThat(field("Food and the like").getValue()).isEqualTo("76.00");
        served(TRACK);
        assertThat(paragraphs()).contains("Comes to $211.00.", "All of it by one.");
        press("Save");
        assertThat(find(H1.class).single().getText()).isEqualTo("Receipts");
        assertThat(kept().date()).isEqualTo(first);
        assertThat(kept().lines())
                .extracting(ReceiptLine::kind, ReceiptLine::amount, ReceiptLine::shares)
                .containsExactly(
                        tuple(LineKind.FUEL, Cash.parse("135.00 USD"), List.of(Share.all("water", "water-track"))),
                        tuple(LineKind.OTHER, Cash.parse("76.00 USD"), List.of(Share.all("water", "water-track"))));
    }

    @Test
    void a_drive_by_rate_is_shared_by_the_hours_and_told_before_it_is_kept() {
        go();
        counts(DriveWay.RATE);
        assertThat(paragraphs()).contains("Comes to $76.00 without the drive, which is not filled in yet.");
        assertThat(field("There and back, mi").getValue()).isEqualTo("186");
        test(field("Rate for a mile, USD")).setValue("0.70");
        test(field("Tolls")).setValue("6");
        served(TRACK, TOPSOIL);
        assertThat(paragraphs()).contains("Shared in equal parts, because no hours are written.");
        worked("Worked, h", "6.5", "3,5");
        // 130.20 + 6 + 76 over 6.5 and 3.5 of 10 h
        assertThat(paragraphs()).contains("Comes to $212.20.", "Shared by the hours worked on each.");
        assertThat(items()).anyMatch(i -> i.endsWith("$137.93")).anyMatch(i -> i.endsWith("$74.27"));
        press("Save");
        assertThat(kept().sum()).isEqualTo(Cash.parse("212.20 USD"));
        go();
        assertThat(field("Rate for a mile, USD").getValue()).isEqualTo("0.7");
    }

    @Test
    void fuel_is_counted_in_litres_and_a_trip_by_mass_where_the_place_says_so() {
        Budgeting byMass = Changed.with(Budgeting.class, DEMO.budgetingOrPlain(), "tripsShared", TripSharing.BY_MASS);
        open(Changed.with(Changed.with(DEMO, "budgeting", byMass), "units", UnitSystem.METRIC));
        go();
        counts(DriveWay.FUEL);
        test(field("There and back, km")).setValue("300");
        test(field("Litres for 100 km")).setValue("8,5");
        test(field("Price of a litre, USD")).setValue("1.459");
        test(field("Food and the like")).setValue("");
        served(TRACK, TOPSOIL);
        worked("Brought, kg", "90", "30 kg");
        // 25.5 L at 1.459 = 37.20; three quarters and one
        assertThat(paragraphs()).contains("Comes to $37.20.", "Shared by the mass brought for each.");
        assertThat(items()).anyMatch(i -> i.endsWith("$27.90")).anyMatch(i -> i.endsWith("$9.30"));
    }

    @Test
    void what_cannot_be_read_is_refused_at_its_field_with_what_to_do() {
        go();
        counts(DriveWay.RATE);
        test(field("There and back, mi")).setValue("far");
        assertThat(field("There and back, mi").getErrorMessage())
                .startsWith("This is not a number with its unit. Write a length such as");
        test(field("Rate for a mile, USD")).setValue("1,234");
        served(TRACK, TOPSOIL);
        worked("Worked, h", "6.3");
        assertThat(find(TextField.class)
                        .withCaption("Worked, h")
                        .all()
                        .getFirst()
                        .getErrorMessage())
                .contains("Write '6.25 h' or '6 h 15 min'");
        press("Save");
        assertThat(field("Rate for a mile, USD").getErrorMessage()).startsWith("This is not a number.");
        field("Rate for a mile, USD").setValue("$0.70");
        assertThat(field("Rate for a mile, USD").isInvalid()).isFalse();
        day("First day").setValue(LocalDate.now().plusDays(2));
        assertThat(day("First day").getErrorMessage()).startsWith("This day has not come yet.");
        press("Save");
        assertThat(book.all(place)).isEmpty();
        counts(DriveWay.ON_RECEIPTS);
        day("First day").setValue(first);
        day("Last day").setValue(last);
        test(field("Food and the like")).setValue("");
        worked("Worked, h", "6");
        press("Save");
        assertThat(paragraphs()).anyMatch(p -> p.startsWith("The trip costs nothing so far"));
        assertThat(book.all(place)).isEmpty();
    }

    @Test
    void food_that_was_taken_out_stays_out_while_days_are_corrected() {
        go();
        field("Food and the like").setValue("");
        day("Last day").setValue(first.minusDays(1));
        day("Last day").setValue(last);
        assertThat(field("Food and the like").getValue()).isEmpty();
        field("Food and the like").setValue("76.00");
        day("Last day").setValue(first.minusDays(1));
        day("Last day").setValue(first);
        assertThat(field("Food and the like").getValue()).isEqualTo("38.00");
    }

    @Test
    void hours_that_nobody_bears_are_asked_about() {
        go();
        served(TRACK);
        find(ComboBox.class).withCaption("For").single().clear();
        worked("Worked, h", "6");
        press("Save");
        assertThat(find(ComboBox.class).withCaption("For").single().getErrorMessage())
                .isEqualTo("What was it for?");
        assertThat(book.all(place)).isEmpty();
        worked("Worked, h", "");
        press("Save");
        assertThat(kept().lines()).allMatch(l -> l.shares().isEmpty());
    }

    @Test
    void fuel_of_these_days_is_told_and_asked_about_before_it_is_counted_twice() {
        ReceiptLine gasoline = new ReceiptLine(
                LineKind.FUEL, "Gasoline", null, BigDecimal.ONE, null, Cash.parse("43.47 USD"), List.of());
        book.add(
                place,
                new Receipt(
                        "r",
                        first.minusDays(1),
                        "Fuel station",
                        ReceiptState.PAID,
                        List.of(gasoline),
                        Cash.parse("0 USD"),
                        Cash.parse("0 USD"),
                        Cash.parse("0 USD"),
                        null,
                        null),
                List.of());
        go();
        served(TRACK);
        assertThat(items()).anyMatch(i -> i.startsWith("Fuel station, ") && i.endsWith("which this drive counts too"));
        press("Save");
        assertThat(book.all(place)).hasSize(1);
        assertThat(find(Button.class).withText("Save as well").all()).hasSize(1);
        counts(DriveWay.ON_RECEIPTS);
        assertThat(items()).noneMatch(i -> i.startsWith("Fuel station, "));
        press("Save");
        assertThat(book.all(place)).hasSize(2);
        // the same trip once more
        go();
        assertThat(items()).anyMatch(i -> i.endsWith("is a trip of these days that was written down before"));
        press("Save");
        assertThat(book.all(place)).hasSize(2);
        press("Save as well");
        assertThat(book.all(place)).hasSize(3);
    }

    @Test
    void food_follows_the_days_until_somebody_writes_it() {
        go();
        day("Last day").setValue(last.plusDays(1));
        assertThat(field("Food and the like").getValue()).isEqualTo("114.00");
        test(field("Food and the like")).setValue("50");
        day("Last day").setValue(last);
        assertThat(field("Food and the like").getValue()).isEqualTo("50");
    }

    @Test
    void the_days_that_were_free_last_are_filled_in_and_those_to_come_are_not() {
        LocalDate today = LocalDate.of(2027, 5, 9);
        OpenTrip weekend = new OpenTrip(today.minusDays(1), today.plusDays(1));
        assertThat(TripDays.likely(java.util.Optional.of(weekend), today))
                .isEqualTo(new OpenTrip(today.minusDays(1), today));
        assertThat(TripDays.likely(java.util.Optional.empty(), today)).isEqualTo(new OpenTrip(today, today));
        OpenTrip yearLong = new OpenTrip(today.minusDays(365), today);
        assertThat(TripDays.likely(java.util.Optional.of(yearLong), today)).isEqualTo(new OpenTrip(today, today));
    }

    @Test
    void a_trip_is_bought_from_nobody_and_its_receipt_is_changed_like_any_other() {
        go();
        served(TRACK);
        press("Save");
        assertThat(find(Anchor.class).all()).extracting(Anchor::getHref).contains(SpendPages.TRIP);
        navigate(SpendPages.newReceipt(), Div.class);
        assertThat(find(ComboBox.class).withCaption("Supplier").single().getValue())
                .isNull();
        Receipt before = kept();
        navigate(SpendPages.receipt(book.all(place).getFirst().id()), Div.class);
        press("Save");
        assertThat(kept()).isEqualTo(before);
    }
}
