package org.firmset.spend.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.OpenTrip;
import org.firmset.homestead.Progress;
import org.firmset.homestead.Stage;
import org.firmset.measure.Cash;
import org.firmset.spend.DriveWay;
import org.firmset.spend.DriveWords;
import org.firmset.spend.Receipt;
import org.firmset.spend.TripCost;
import org.firmset.spend.TripReceipt;
import org.firmset.spend.ui.Bearers.Bearer;
import org.javamoney.moneta.Money;

/** A trip that was made as fields, most of them filled in: days, drive and food as the homestead has them. */
final class TripForm extends Div {
    private final Homestead homestead;
    private final DriveWords words;
    private final TripCost.Rule rule;
    private final TripDays days;
    private final DriveFields drive;
    private final AmountField tolls;
    private final AmountField food;
    private final ServedFields served;
    private String usualFood;
    private Runnable changed = () -> {};

    /** @param before the trip that was written down last */
    TripForm(Homestead homestead, Bearers bearers, Optional<Receipt> before, LocalDate today) {
        this.homestead = homestead;
        words = new DriveWords(homestead.units(), homestead.currency());
        rule = TripCost.Rule.of(homestead.budgetingOrPlain().tripsShared());
        OpenTrip likely = TripDays.likely(OpenTrip.latest(homestead.openDates(), today), today);
        days = new TripDays(likely, today);
        drive = new DriveFields(homestead.travel(), words, typed(before));
        tolls = new AmountField("Tolls", homestead.currency(), null);
        food = new AmountField("Food and the like", homestead.currency(), null);
        food.setHelperText("Begins with what is written for each day");
        usualFood = usualFood();
        food.setValue(usualFood);
        served = new ServedFields(bearers, rule, homestead.units(), workedOn(likely), this::tell);
        Div besides = new Div(tolls, food);
        besides.addClassName("fs-trip-fields");
        Paragraph asked = new Paragraph("It is shared " + rule.words() + ", as budgets of this place are reckoned.");
        add(days, drive, besides, new H2("What it served"), asked, served);
        addClassName("fs-receipt-form");
        listen();
    }

    private DriveWords.Typed typed(Optional<Receipt> before) {
        DriveWay usual = homestead.travel().costPerTrip().isZero() ? DriveWay.RATE : DriveWay.SUM;
        return before.map(b -> TripReceipt.typed(b, words)).orElseGet(() -> new DriveWords.Typed(usual, "", "", ""));
    }

    private String usualFood() {
        Money all = homestead.travel().costPerDay().multiply(days.count());
        return all.isZero() ? "" : Cash.amountOf(all).toPlainString();
    }

    /** Stages that were begun by then and not finished before. */
    private List<Bearer> workedOn(OpenTrip trip) {
        return homestead.stages().stream()
                .filter(s -> s.progress() != null && isDuring(Objects.requireNonNull(s.progress()), trip))
                .map(TripForm::bearer)
                .toList();
    }

    private static boolean isDuring(Progress progress, OpenTrip trip) {
        LocalDate finished = progress.finishedOn();
        return !progress.startedOn().isAfter(trip.last()) && (finished == null || !finished.isBefore(trip.first()));
    }

    private static Bearer bearer(Stage stage) {
        return new Bearer(stage.subproject(), stage.key());
    }

    private void listen() {
        days.onChange(() -> {
            followDays();
            tell();
        });
        drive.onChange(this::tell);
        tolls.addValueChangeListener(e -> tell());
        food.addValueChangeListener(e -> tell());
    }

    /** What somebody typed stays, and so does all of it while the days are not right. */
    private void followDays() {
        if (days.count() == 0) {
            return;
        }
        boolean asUsual = food.getValue().equals(usualFood);
        usualFood = usualFood();
        if (asUsual) {
            food.setValue(usualFood);
        }
    }

    private void tell() {
        changed.run();
    }

    /** @param listener run after something changed */
    void onChange(Runnable listener) {
        changed = listener;
    }

    /** Whether the drive can be reckoned by now. */
    boolean knowsTheDrive() {
        return drive.peek().isPresent();
    }

    /** As far as it can be read, a drive that is not known yet left out; empty while the days are not right. */
    Optional<TripReceipt> peek() {
        TripCost.Drive known = drive.peek().orElseGet(() -> new TripCost.OnReceipts(homestead.currency()));
        TripCost cost = new TripCost(known, tolls.orZero(), food.orZero());
        return days.peek().map(d -> new TripReceipt(d.first(), d.last(), cost, rule, served.peek(), words));
    }

    /** The trip, or nothing with the fields marked. */
    Optional<TripReceipt> read() {
        return days.check() & drive.check() & tolls.check(false) & food.check(false) & served.check()
                ? peek()
                : Optional.empty();
    }
}
