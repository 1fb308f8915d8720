package org.firmset.spend.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.combobox.ComboBoxBase;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.QueryParameters;
import com.zaxxer.hikari.HikariDataSource;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.firmset.homestead.store.Kept;
import org.firmset.measure.Cash;
import org.firmset.spend.ContentHash;
import org.firmset.spend.LineKind;
import org.firmset.spend.RandomReceipts;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptFilter;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.ReceiptState;
import org.firmset.spend.Share;
import org.firmset.spend.store.KeptReceipt;
import org.firmset.spend.table.ReceiptExport;
import org.firmset.spend.table.Role;
import org.firmset.spend.table.SeedReceipts;
import org.firmset.spend.table.TableReader;
import org.javamoney.moneta.Money;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Pages of receipts without a browser. */
class ReceiptPagesTest extends SpendPagesWithoutBrowser {
    @Autowired
    private Clock clock;

    @Autowired
    private HikariDataSource pool;

    private void takeDemo() {
        book.takeAll(place, SeedReceipts.demo(DEMO, 0), ContentHash.of(new byte[] {1}));
    }

    private void go(String address) {
        navigate(address, Div.class);
    }

    private static void ask(String query) {
        UI.getCurrent().navigate(SpendPages.RECEIPTS, QueryParameters.fromString(query));
    }

    @Test
    void a_homestead_without_receipts_says_how_to_begin() {
        go("spend/receipts");
        assertThat(paragraphs()).anyMatch(p -> p.startsWith("Nothing has been entered yet."));
    }

    @Test
    void the_list_holds_what_the_address_asks_for_and_its_sum() {
        takeDemo();
        ask("subproject=water&month=2026-11");
        assertThat(items()).hasSize(2).anyMatch(i -> i.contains("ordered, $1,830.00 to pay"));
        assertThat(find(ComboBox.class).withCaption("Month").single().getValue())
                .isEqualTo(YearMonth.of(2026, 11));
        ask(SpendPages.query(new ReceiptFilter(null, null, "Grocery in town", LineKind.OTHER, null)));
        assertThat(items()).hasSize(5).allMatch(i -> i.contains("Food, two people"));
        ask("subproject=moat");
        assertThat(items()).isEmpty();
        assertThat(paragraphs()).contains("No receipt is like that.");
    }

    /** An address is typed and sent by anybody. */
    @Test
    void an_address_that_asks_for_odd_things_lists_nothing_or_passes_over_them() {
        takeDemo();
        int all = book.all(place).size();
        for (String odd : List.of(
                "month=2026-99", "kind=bogus", "work=never", "state=lost", "unheard=1", "month=", "stage=%20")) {
            ask(odd);
            assertThat(items()).as(odd).hasSize(all);
        }
        for (String odd : List.of(
                "subproject=%3Cb%3Ex%3C%2Fb%3E",
                "supplier=%27%22%3E%3Cscript%3E",
                "material=" + "m".repeat(3000),
                "month=%2B999999999-12",
                "stage=..%2F..%2F&subproject=-")) {
            ask(odd);
            assertThat(paragraphs()).as(odd).contains("No receipt is like that.");
        }
        assertThat(find(com.vaadin.flow.component.Html.class).all()).isEmpty();
    }

    @Test
    void of_very_many_the_latest_are_shown_and_earlier_ones_when_asked_for() {
        RandomReceipts random = new RandomReceipts(RandomReceipts.SEED);
        book.takeAll(place, random.many(450), ContentHash.of(new byte[] {1}));
        go("spend/receipts");
        assertThat(find(UnorderedList.class).all().stream()
                        .filter(l -> l.hasClassName("fs-ledger"))
                        .mapToLong(l -> l.getChildren().count())
                        .sum())
                .isEqualTo(200);
        List<String> months = months();
        List<String> expected = rowsOfDays();
        press("Show earlier ones, " + (expected.size() - 200) + " more");
        press("Show earlier ones, " + (expected.size() - 400) + " more");
        List<String> days = find(Span.class).all().stream()
                .filter(s -> s.hasClassName("fs-ledger-day"))
                .map(Span::getText)
                .toList();
        assertThat(days).as("seed %d", RandomReceipts.SEED).isEqualTo(expected).hasSizeBetween(451, 600);
        assertThat(figures()).contains("Receipts450");
        assertThat(months()).startsWith(months.toArray(String[]::new)).doesNotHaveDuplicates();
        assertThat(find(Button.class).withText("Show earlier ones, 0 more").exists())
                .isFalse();
    }

    /** Of each receipt its day, and that of a rest that was paid later; the latest first. */
    private List<String> rowsOfDays() {
        return book.all(place).stream()
                .map(KeptReceipt::receipt)
                .flatMap(r -> Stream.concat(Stream.of(r.date()), r.restPaidOn().stream()))
                .sorted(Comparator.reverseOrder())
                .map(Months::day)
                .toList();
    }

    private String figures() {
        return find(Div.class).withClassName("fs-figures").single().getElement().getTextRecursively();
    }

    private List<String> months() {
        return find(H2.class).all().stream()
                .filter(t -> t.hasClassName("fs-ledger-month"))
                .map(t -> t.getElement().getTextRecursively())
                .toList();
    }

    @Test
    void a_receipt_of_two_lines_is_entered_checked_against_its_paper_and_kept() {
        takeDemo();
        go("spend/receipts/new");
        assertThat(find(ComboBox.class).withCaption("Supplier").single().getValue())
                .isEqualTo("Tank, pipe and water supplier");
        press("Save");
        assertThat(field("What").isInvalid()).isTrue();
        assertThat(field("Amount").isInvalid()).isTrue();
        test(field("What")).setValue("Pipe");
        test(field("Amount")).setValue("10");
        test(field("Tax on top")).setValue("0,80");
        test(field("Total on the paper")).setValue("11.80");
        assertThat(paragraphs()).anyMatch(p -> p.startsWith("Comes to $10.80. The paper says $1.00 more"));
        press("Save");
        assertThat(items()).anyMatch(i -> i.startsWith("Total [11.80 USD] is not what lines"));
        assertThat(book.all(place)).hasSize(26);
        press("Add a line");
        TextField second = find(TextField.class).withCaption("What").all().get(1);
        test(second).setValue("Glue");
        test(find(TextField.class).withCaption("Amount").all().get(1)).setValue("1.00");
        press("Save");
        Receipt kept = book.all(place).getLast().receipt();
        assertThat(kept.sum()).isEqualTo(Cash.parse("11.80 USD"));
        assertThat(kept.lines()).extracting(ReceiptLine::text).containsExactly("Pipe", "Glue");
        assertThat(kept.lines().get(1).shares()).containsExactly(Share.all("water", "water-tank-set"));
    }

    @Test
    void a_receipt_that_is_opened_and_saved_stays_as_it_was() {
        takeDemo();
        List<KeptReceipt> all = book.all(place);
        // every fourth, and the last: paid ones with shares, returns and the order
        for (int i = all.size() - 1; i >= 0; i -= 4) {
            KeptReceipt before = all.get(i);
            go(SpendPages.receipt(before.id()));
            press("Save");
            KeptReceipt after = book.find(place, before.id()).orElseThrow();
            assertThat(after.receipt()).isEqualTo(before.receipt());
            assertThat(after.version()).isGreaterThan(before.version());
        }
    }

    /** Pumps tell three decimals, and "12.345" alone could be thousands. */
    @Test
    void three_decimals_of_a_quantity_and_a_part_stay_when_a_receipt_is_opened_and_saved() {
        ReceiptLine fuel = new ReceiptLine(
                LineKind.FUEL,
                "Fuel",
                null,
                new BigDecimal("12.345"),
                null,
                Cash.parse("45.00 USD"),
                List.of(
                        new Share("water", null, new BigDecimal("2.125")),
                        new Share("shop", null, new BigDecimal("1.5"))));
        Money none = Cash.parse("0 USD");
        book.add(
                place,
                new Receipt(
                        "r-fuel",
                        LocalDate.of(2026, 10, 1),
                        "Fuel stop",
                        ReceiptState.PAID,
                        List.of(fuel),
                        none,
                        none,
                        none,
                        null,
                        null),
                List.of());
        KeptReceipt before = book.all(place).getFirst();
        go(SpendPages.receipt(before.id()));
        press("Save");
        KeptReceipt after = book.find(place, before.id()).orElseThrow();
        assertThat(after.receipt()).isEqualTo(before.receipt());
        assertThat(after.version()).isGreaterThan(before.version());
    }

    /** Day, supplier and sum of the receipt b-04, the name typed in another way. */
    private void enterTheFuelOnceMore() {
        go("spend/receipts/new");
        find(DatePicker.class).single().setValue(LocalDate.of(2026, 9, 25));
        find(ComboBox.class).withCaption("Supplier").single().setValue("fuel station  on the Highway");
        test(field("What")).setValue("Gasoline");
        test(field("Amount")).setValue("43.47");
    }

    private boolean saysItIsThere() {
        return find(AlikeNote.class).all().stream()
                .anyMatch(n -> n.getElement()
                        .getTextRecursively()
                        .contains("is there already: Fuel station on the highway, Fri 25 Sep 2026, $43.47"));
    }

    @Test
    void a_receipt_that_looks_like_another_is_saved_with_a_second_press_only() {
        takeDemo();
        KeptReceipt other = book.all(place).stream()
                .filter(r -> r.receipt().key().equals("b-04"))
                .findFirst()
                .orElseThrow();
        enterTheFuelOnceMore();
        assertThat(saysItIsThere()).isTrue();
        assertThat(find(Anchor.class).all()).extracting(Anchor::getHref).contains(SpendPages.receipt(other.id()));
        press("Save");
        assertThat(book.all(place)).hasSize(26);
        press("Save as well");
        assertThat(book.all(place)).hasSize(27);
        assertThat(find(H1.class).single().getText()).isEqualTo("Receipts");
    }

    @Test
    void what_was_asked_for_one_sum_is_asked_again_for_another_and_not_without_need() {
        takeDemo();
        enterTheFuelOnceMore();
        press("Save and enter the next");
        assertThat(find(Button.class)
                        .withText("Save as well and enter the next")
                        .all())
                .hasSize(1);
        test(field("Amount")).setValue("43.48");
        assertThat(saysItIsThere()).isFalse();
        assertThat(find(Button.class).withText("Save as well").all()).isEmpty();
        test(field("Amount")).setValue("43.47");
        press("Save");
        assertThat(book.all(place)).hasSize(26);
        test(field("Amount")).setValue("43.48");
        press("Save");
        assertThat(book.all(place)).hasSize(27);
    }

    @Test
    void of_two_that_were_kept_alike_each_is_changed_without_a_question() {
        takeDemo();
        enterTheFuelOnceMore();
        press("Save");
        press("Save as well");
        KeptReceipt second = book.all(place).stream()
                .filter(r -> r.receipt().key().startsWith("r-"))
                .findFirst()
                .orElseThrow();
        go(SpendPages.receipt(second.id()));
        test(field("What")).setValue("Gasoline, second tank");
        assertThat(saysItIsThere()).isFalse();
        press("Save");
        assertThat(book.find(place, second.id())
                        .orElseThrow()
                        .receipt()
                        .lines()
                        .getFirst()
                        .text())
                .isEqualTo("Gasoline, second tank");
    }

    @Test
    void a_return_is_entered_without_minuses_and_kept_with_them() {
        go("spend/receipts/new");
        find(ComboBox.class).withCaption("Supplier").single().setValue("Building yard in town");
        @SuppressWarnings("unchecked")
        RadioButtonGroup<ReceiptState> state = find(RadioButtonGroup.class).single();
        state.setValue(ReceiptState.RETURNED);
        test(field("What")).setValue("Posts");
        test(field("Amount")).setValue("22.50");
        press("Save");
        Receipt kept = book.all(place).getFirst().receipt();
        assertThat(kept.sum()).isEqualTo(Cash.parse("-22.50 USD"));
        assertThat(kept.lines().getFirst().quantity()).isEqualTo(BigDecimal.ONE.negate());
    }

    @Test
    void a_change_somebody_else_made_meanwhile_is_not_written_over() {
        takeDemo();
        KeptReceipt kept = book.all(place).getFirst();
        go(SpendPages.receipt(kept.id()));
        book.change(place, kept.id(), kept.version(), kept.receipt().withDate(LocalDate.of(2026, 9, 1)), List.of());
        press("Save");
        assertThat(paragraphs()).anyMatch(p -> p.startsWith("This receipt was changed in another window"));
        assertThat(book.find(place, kept.id()).orElseThrow().receipt().date()).isEqualTo(LocalDate.of(2026, 9, 1));
    }

    @Test
    void a_part_of_a_name_is_enough_and_an_unclear_one_never_leaves_the_entry_that_stood_there() {
        takeDemo();
        go(SpendPages.newReceipt());
        @SuppressWarnings("unchecked")
        ComboBox<Bearers.Bearer> bearer =
                find(ComboBox.class).withCaption("For").single();
        assertThat(bearer.getValue()).isEqualTo(new Bearers.Bearer("water", "water-tank-set"));
        typed(bearer, "pour the cap");
        assertThat(bearer.getValue()).isEqualTo(new Bearers.Bearer("water", "water-cap-pour"));
        typed(bearer, "pour");
        assertThat(bearer.getValue()).isNull();
        assertThat(bearer.getErrorMessage()).isEqualTo("More than one fits \"pour\": pick one");
        field("What").setValue("Bags");
        field("Amount").setValue("10");
        int before = book.all(place).size();
        press("Save");
        assertThat(book.all(place)).hasSize(before);
        typed(bearer, "water");
        assertThat(bearer.isInvalid()).isFalse();
        press("Save");
        assertThat(book.all(place)).hasSize(before + 1);
    }

    private static void typed(ComboBox<?> box, String text) {
        ComponentUtil.fireEvent(box, new ComboBoxBase.CustomValueSetEvent<>(box, true, text));
    }

    @Test
    void of_an_order_it_says_what_is_still_to_pay_and_a_minus_is_not_needed() {
        takeDemo();
        go(SpendPages.newReceipt());
        @SuppressWarnings("unchecked")
        RadioButtonGroup<ReceiptState> state = find(RadioButtonGroup.class).single();
        state.setValue(ReceiptState.ORDERED);
        field("Amount").setValue("880");
        field("Paid down so far").setValue("200");
        assertThat(paragraphs()).contains("Comes to $880.00, $680.00 of it still to pay.");
        field("Amount").setValue("-880");
        press("Save");
        assertThat(field("Amount").getErrorMessage()).isEqualTo("Write it without a minus");
    }

    private KeptReceipt theOrder() {
        return book.all(place).stream()
                .filter(k -> k.receipt().key().equals("b-26"))
                .findFirst()
                .orElseThrow();
    }

    private void choose(ReceiptState wanted) {
        @SuppressWarnings("unchecked")
        RadioButtonGroup<ReceiptState> state = find(RadioButtonGroup.class).single();
        state.setValue(wanted);
    }

    private boolean asksFor(String caption) {
        return find(TextField.class).withCaption(caption).exists()
                || find(DatePicker.class).withCaption(caption).exists();
    }

    private DatePicker day(String caption) {
        return find(DatePicker.class).withCaption(caption).single();
    }

    @Test
    void what_is_paid_ahead_is_still_to_come_until_it_is_here() {
        takeDemo();
        KeptReceipt order = theOrder();
        go(SpendPages.receipt(order.id()));
        press("Paid, still to come");
        Receipt ahead = theOrder().receipt();
        assertThat(ahead.state()).isEqualTo(ReceiptState.PAID_AHEAD);
        assertThat(ahead.restOn()).isEqualTo(LocalDate.now(clock));
        ask("state=paid-ahead");
        assertThat(items()).hasSize(2).allMatch(i -> i.contains("still to come"));
        go(SpendPages.receipt(order.id()));
        press("It is here");
        assertThat(theOrder().receipt().state()).isEqualTo(ReceiptState.PAID);
        assertThat(theOrder().receipt().restOn()).isEqualTo(ahead.restOn());
    }

    @Test
    void an_order_is_marked_as_paid_with_one_press_and_its_rest_counts_today() {
        takeDemo();
        KeptReceipt order = theOrder();
        LocalDate today = LocalDate.now(clock);
        go(SpendPages.receipt(order.id()));
        press("Paid, and it is here");
        Receipt paid = theOrder().receipt();
        assertThat(paid.state()).isEqualTo(ReceiptState.PAID);
        assertThat(paid.deposit()).isEqualTo(Cash.parse("400.00 USD"));
        assertThat(paid.restOn()).isEqualTo(today);
        assertThat(paid.lines()).isEqualTo(order.receipt().lines());
        assertThat(find(H1.class).single().getText()).isEqualTo("Receipts");
        assertThat(items())
                .anyMatch(i -> i.startsWith(Months.day(today))
                        && i.contains("ordered on Sat 14 Nov 2026, the rest paid")
                        && i.endsWith("$1,830.00"))
                .anyMatch(i -> i.startsWith("Sat 14")
                        && i.contains("paid down, the rest on " + Months.date(today))
                        && i.endsWith("$400.00"));
        ask("subproject=water&month=" + YearMonth.from(today));
        assertThat(figures()).contains("On order, still to pay$0.00");
        go(SpendPages.receipt(order.id()));
        assertThat(find(Button.class).withText("Paid, and it is here").exists()).isFalse();
        assertThat(paragraphs())
                .contains("Comes to $2,230.00, $1,830.00 of it paid on " + Months.date(today)
                        + ". That is the total on the paper.");
        press("Save");
        assertThat(theOrder().receipt()).isEqualTo(paid);
    }

    @Test
    void the_day_of_a_rest_is_asked_for_only_where_there_may_be_one() {
        takeDemo();
        LocalDate today = LocalDate.now(clock);
        go(SpendPages.newReceipt());
        assertThat(asksFor("Paid down so far") || asksFor("Rest due on") || asksFor("Rest paid on"))
                .isFalse();
        choose(ReceiptState.ORDERED);
        field("Amount").setValue("880");
        day("Rest due on").setValue(today.plusDays(20));
        assertThat(paragraphs())
                .contains("Comes to $880.00, $880.00 of it still to pay on " + Months.date(today.plusDays(20)) + ".");
        choose(ReceiptState.RETURNED);
        assertThat(asksFor("Paid down so far") || asksFor("Rest due on") || asksFor("Rest paid on"))
                .isFalse();
        choose(ReceiptState.ORDERED);
        field("Paid down so far").setValue("200");
        choose(ReceiptState.PAID);
        assertThat(day("Rest paid on").getValue()).isEqualTo(today);
        assertThat(paragraphs()).contains("Comes to $880.00, $680.00 of it paid on " + Months.date(today) + ".");
        choose(ReceiptState.ORDERED);
        assertThat(day("Rest due on").getValue()).isEqualTo(today.plusDays(20));
    }

    @Test
    void a_slip_to_returned_changes_no_day_of_a_rest() {
        takeDemo();
        go(SpendPages.receipt(theOrder().id()));
        choose(ReceiptState.RETURNED);
        choose(ReceiptState.PAID);
        assertThat(day("Rest paid on").getValue()).isEqualTo(LocalDate.now(clock));
        choose(ReceiptState.RETURNED);
        choose(ReceiptState.ORDERED);
        assertThat(day("Rest due on").getValue()).isEqualTo(LocalDate.of(2027, 7, 16));
    }

    @Test
    void a_paid_order_says_when_its_rest_was_paid_or_what_is_missing() {
        takeDemo();
        KeptReceipt order = theOrder();
        go(SpendPages.receipt(order.id()));
        assertThat(day("Rest due on").getValue()).isEqualTo(LocalDate.of(2027, 7, 16));
        choose(ReceiptState.PAID);
        day("Rest paid on").clear();
        press("Save");
        assertThat(items()).anyMatch(i -> i.startsWith("Paid down so far [400.00 USD] is paid down on something that"));
        day("Rest paid on").setValue(LocalDate.now(clock).plusDays(1));
        press("Save");
        assertThat(items()).anyMatch(i -> i.startsWith("Day of the rest [") && i.contains("is still to come"));
        assertThat(theOrder()).isEqualTo(order);
        day("Rest paid on").setValue(LocalDate.of(2026, 11, 20));
        press("Save");
        assertThat(theOrder().receipt().restOn()).isEqualTo(LocalDate.of(2026, 11, 20));
        ask("month=2026-11");
        assertThat(months()).containsExactly("November 2026$2,270.50");
    }

    @Test
    void what_is_dated_after_today_is_told_with_what_to_do() {
        takeDemo();
        go(SpendPages.newReceipt());
        day("Date").setValue(LocalDate.now(clock).plusDays(1));
        field("What").setValue("Boards");
        field("Amount").setValue("10");
        press("Save");
        assertThat(items())
                .anyMatch(i -> i.startsWith("Date [") && i.contains("is still to come") && i.contains("is 'ordered'"));
        assertThat(book.all(place)).hasSize(26);
    }

    @Test
    void receipts_of_one_state_are_listed_and_the_bar_lets_go_of_it() {
        takeDemo();
        ask("subproject=water&state=ordered");
        assertThat(items()).hasSize(1).first().asString().contains("$1,830.00 to pay on Fri 16 Jul 2027");
        ComboBox<?> state = find(ComboBox.class).withCaption("State").single();
        assertThat(state.getValue()).isEqualTo(ReceiptState.ORDERED);
        state.clear();
        assertThat(items()).hasSizeGreaterThan(10);
        assertThat(find(ComboBox.class).withCaption("Subproject").single().getValue())
                .isEqualTo("water");
    }

    @Test
    void a_receipt_is_removed_and_one_that_is_not_there_is_not_found() {
        takeDemo();
        KeptReceipt kept = book.all(place).getFirst();
        go(SpendPages.receipt(kept.id()));
        press("Remove this receipt");
        assertThat(book.find(place, kept.id())).isPresent();
        press("Press again: nothing brings it back");
        assertThat(book.find(place, kept.id())).isEmpty();
        assertThat(find(H1.class).single().getText()).isEqualTo("Receipts");
    }

    @Test
    void a_table_is_previewed_with_faults_and_then_taken_and_its_columns_remembered() {
        Kept kept = homesteads.find(place).orElseThrow();
        ImportView view = (ImportView) navigate("spend/import", Div.class);
        view.show(read("Day,Where,What,Cost\n2026-10-01,Mill,Posts,ten\n"), kept);
        assertThat(items()).anyMatch(i -> i.startsWith("line 2, column 'Cost' [ten] is no number here."));
        view.show(read("Day,Where,What,Cost\n2026-10-01,Mill,Posts,10.00\n"), kept);
        press("Take in 1 receipt, $10.00");
        assertThat(paragraphs()).contains("1 receipt taken in.");
        TableReader.Read again = read("Day,Where,What,Cost\n2026-10-01,Mill,Posts,10.00\n");
        assertThat(book.match(place, again.table().orElseThrow().fingerprint())).isPresent();
        view.show(again, kept);
        assertThat(paragraphs()).contains("This very file was taken in before.");
        assertThat(find(Button.class)
                        .withText("Take in 0 receipts, $0.00")
                        .single()
                        .isEnabled())
                .isFalse();
        assertThat(book.all(place)).hasSize(1);
    }

    /** Each looked at it before the other took it in. */
    @Test
    void of_two_tabs_with_the_same_table_the_second_is_told_that_it_was_taken() {
        Kept kept = homesteads.find(place).orElseThrow();
        TableReader.Read table = read("Day,Where,What,Cost\n2026-10-01,Mill,Posts,10.00\n");
        ImportView first = (ImportView) navigate("spend/import", Div.class);
        first.show(table, kept);
        Button take = find(Button.class).withText("Take in 1 receipt, $10.00").single();
        go("spend/receipts");
        ImportView second = (ImportView) navigate("spend/import", Div.class);
        second.show(table, kept);
        press("Take in 1 receipt, $10.00");
        assertThat(paragraphs()).contains("1 receipt taken in.");
        take.click();
        assertThat(first.getElement().getTextRecursively())
                .contains("Nothing was taken.")
                .contains("was taken in meanwhile");
        assertThat(book.all(place)).hasSize(1);
    }

    /** A slow line would keep others from the database. */
    @Test
    void all_receipts_go_out_as_a_table_without_a_connection_held() throws IOException {
        book.takeAll(place, new RandomReceipts(RandomReceipts.SEED).many(450), ContentHash.of(new byte[] {1}));
        List<Integer> connections = new ArrayList<>();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        OutputStream line = new OutputStream() {
            @Override
            public void write(int one) {
                write(new byte[] {(byte) one}, 0, 1);
            }

            @Override
            public void write(byte[] some, int from, int length) {
                connections.add(pool.getHikariPoolMXBean().getActiveConnections());
                bytes.write(some, from, length);
            }
        };
        new ReceiptsView(homesteads, book).write(place, line);
        assertThat(connections).hasSizeGreaterThan(3).containsOnly(0);
        assertThat(bytes.toString(StandardCharsets.UTF_8))
                .isEqualTo(ReceiptExport.write(
                        book.all(place).stream().map(KeptReceipt::receipt).toList()));
    }

    /** What only programmers say is in no label. */
    @Test
    void the_columns_of_a_table_are_asked_for_in_plain_words() {
        Kept kept = homesteads.find(place).orElseThrow();
        ImportView view = (ImportView) navigate("spend/import", Div.class);
        view.show(read(ReceiptExport.write(SeedReceipts.demo(DEMO, 0))), kept);
        find(Details.class).all().forEach(d -> d.setOpened(true));
        List<ComboBox> boxes = find(ComboBox.class).all();
        assertThat(boxes)
                .extracting(b -> b.getLabel())
                .contains("Name of its photo or paper, as exported")
                .noneMatch(l -> l.matches("(?i).*\\b(hash|key|role|id|state|shares|text)\\b.*"));
        // all columns of an export are still known by their headings
        assertThat(boxes).filteredOn(b -> b.getValue() instanceof Integer).hasSize(Role.values().length);
    }

    private static TableReader.Read read(String text) {
        return TableReader.read(text.getBytes(StandardCharsets.UTF_8));
    }
}
