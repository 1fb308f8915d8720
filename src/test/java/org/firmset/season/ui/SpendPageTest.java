package org.firmset.season.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.QueryParameters;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.firmset.measure.Cash;
import org.firmset.season.store.Baselines;
import org.firmset.spend.Baseline;
import org.firmset.spend.LineKind;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.ReceiptState;
import org.firmset.spend.Share;
import org.firmset.spend.store.KeptReceipt;
import org.firmset.spend.store.ReceiptBook;
import org.javamoney.moneta.Money;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The page of money leads from what differs to its receipts, and follows them while it is read. */
class SpendPageTest extends DemoPages {
    private static final String WALL_FEE = "spend/receipts?subproject=water&stage=water-wall&kind=fee";

    @Autowired
    private ReceiptBook book;

    @Autowired
    private Baselines baselines;

    @Autowired
    private JdbcClient sql;

    private UUID place;

    @BeforeEach
    void openTheDemo() {
        place = openTheDemoAndEndTheLook();
    }

    private void openSpendWithABudgetKept() {
        navigate("spend", Div.class);
        test(find(Button.class).withText("Keep today's budget").single()).click();
    }

    /** As if it were entered in another tab. */
    private KeptReceipt enter(String amount) {
        ReceiptLine line = new ReceiptLine(
                LineKind.FEE,
                "Pump for the day",
                null,
                BigDecimal.ONE,
                null,
                Cash.parse(amount),
                List.of(Share.all("water", "water-wall")));
        Receipt receipt = new Receipt(
                "tab-" + amount.replaceAll("\\D", ""),
                seasons.today(),
                "Hire shop",
                ReceiptState.PAID,
                List.of(line),
                Cash.parse("0 USD"),
                Cash.parse("0 USD"),
                Cash.parse("0 USD"),
                null,
                null);
        return ((ReceiptBook.Outcome.Stored) book.add(place, receipt, List.of())).receipt();
    }

    private void open(String summary) {
        details(summary).setOpened(true);
    }

    private Details details(String summary) {
        return find(Details.class).all().stream()
                .filter(d -> d.getSummaryText().equals(summary))
                .findFirst()
                .orElseThrow();
    }

    private List<String> linksTo(String address) {
        return find(Anchor.class).all().stream()
                .filter(a -> a.getHref().equals(address))
                .map(Anchor::getText)
                .toList();
    }

    private String tables() {
        return find(NativeTable.class).all().stream()
                .map(t -> t.getElement().getTextRecursively())
                .reduce("", String::concat);
    }

    @Test
    void whatIsStillToPayOpensToWhatItIsMadeOf() {
        navigate("spend", Div.class);
        open("Water");
        NativeButton figure = find(NativeButton.class).all().stream()
                .filter(b -> String.valueOf(b.getElement().getAttribute("aria-label"))
                        .matches("Pour the cap, still to pay \\$[\\d,.]+: how it is made"))
                .findFirst()
                .orElseThrow();
        assertThat(tables()).doesNotContain("Each, tax included");
        test(figure).click();
        ShownTable parts = find(NativeTable.class).all().stream()
                .map(ShownTable::of)
                .filter(t -> t.rows().getFirst().contains("Due"))
                .findFirst()
                .orElseThrow();
        assertThat(parts.row("Concrete mix, 80 lb").get(1)).matches("\\d+ packs");
        assertThat(parts.row("drives").get(3)).matches("\\w{3} \\d{1,2} \\w{3} 2027");
        long told = parts.rows().subList(1, parts.rows().size() - 1).stream()
                .mapToLong(r -> ShownTable.cents(r.getLast()))
                .sum();
        assertThat(figure.getText())
                .isEqualTo(parts.row("Still to pay").getLast())
                .isEqualTo(Cash.show(told, "USD"));
    }

    @Test
    void aLimitIsAnsweredMonthByMonthBeforeThePlansAreSetSideBySide() {
        navigate("spend", Div.class);
        field("At most in a month").setValue("900,50");
        test(find(Button.class).withText("What would that mean?").single()).click();
        until(() -> paragraphs().stream().anyMatch(p -> p.matches("(Every month keeps within|Over) \\$900\\.50.*")));
        assertThat(tables())
                .contains("Against $900.50 a month")
                .contains("At most $900.50 a month, kept as far as it can be");
    }

    @Test
    void aRiseIsReadWithEitherDecimalMarkAndARefusedOneLeavesNoAnswer() {
        navigate("spend", Div.class);
        field("A rise of, in percent").setValue("8,5");
        assertThat(paragraphs()).anyMatch(p -> p.startsWith("A rise of 8.5 % on all packs makes $"));
        field("A rise of, in percent").setValue("much");
        assertThat(paragraphs()).noneMatch(p -> p.startsWith("A rise of"));
    }

    @Test
    void aReceiptOfAnotherTabIsToldAndNothingTypedOrUnfoldedFoldsUp() {
        openSpendWithABudgetKept();
        field("A rise of, in percent").setValue("10");
        field("At most in a month").setValue("900");
        TextField typed =
                find(TextField.class).withCaption("A rise of, in percent").single();
        open("Water");
        assertThat(linksTo(WALL_FEE)).isEmpty();

        KeptReceipt kept = enter("86.00 USD");
        until(() -> !linksTo(WALL_FEE).isEmpty());
        open("What changed since, thing by thing");
        assertThat(linksTo(WALL_FEE)).containsOnly("$86.00").hasSize(2);
        assertThat(find(TextField.class).withCaption("A rise of, in percent").single())
                .isSameAs(typed);
        assertThat(typed.getValue()).isEqualTo("10");
        assertThat(find(TextField.class)
                        .withCaption("At most in a month")
                        .single()
                        .getValue())
                .isEqualTo("900");
        assertThat(details("Water").isOpened()).isTrue();

        test(figure("$86.00 over")).click();
        assertThat(items()).contains("New: $86.00 now less $0.00 in the budget is $86.00 over.");
        KeptReceipt second = enter("4.00 USD");
        until(() -> linksTo(WALL_FEE).contains("$90.00"));
        assertThat(items()).contains("New: $90.00 now less $0.00 in the budget is $90.00 over.");
        assertThat(linksTo(WALL_FEE)).containsOnly("$90.00").hasSize(3);

        book.remove(place, second.id(), second.version());
        until(() -> linksTo(WALL_FEE).contains("$86.00"));
        book.remove(place, kept.id(), kept.version());
        until(() -> linksTo(WALL_FEE).isEmpty());
        assertThat(paragraphs()).anyMatch(p -> p.matches("Against the budget of .*: as it was to be\\."));
    }

    /** Nothing could ever be held against it. */
    @Test
    void aBudgetThatCouldNotBeReadAgainIsNotKept() {
        Baseline.Item odd = new Baseline.Item(
                "water",
                null,
                LineKind.FEE,
                null,
                BigDecimal.ZERO,
                Cash.parse("1.00 USD"),
                LocalDate.of(206, 10, 1),
                null);
        Baseline budget = new Baseline(seasons.today(), "USD", List.of(odd), List.of());
        int before = baselines.all(place, "USD").whole().size();
        assertThatThrownBy(() -> baselines.keep(place, budget)).isInstanceOf(IllegalArgumentException.class);
        assertThat(baselines.all(place, "USD").whole()).hasSize(before);
    }

    /** They were kept before such were refused, or by a later version of the program. */
    @Test
    void budgetsThatCannotBeReadAreToldOfAndStopNothing() {
        String whole = sql.sql("select document from baseline where homestead_id = ?")
                .param(place)
                .query(String.class)
                .single();
        putAside("2026-03-01", whole.replace("\"version\" : 1", "\"version\" : 2"));
        putAside("2026-03-02", whole.replaceFirst("\"due\" : \"2027", "\"due\" : \"0206"));
        putAside("2026-03-03", whole.substring(0, 400));
        putAside("2026-03-04", whole.replaceFirst("USD\"", "EUR\""));
        List<String> before = documents();

        navigate("spend", Div.class);
        assertThat(title()).isEqualTo("Spend");
        assertThat(paragraphs())
                .anyMatch(p -> p.startsWith("Against the budget of Sat "))
                .anyMatch(p -> p.matches(
                        "The budget of Sun 1 Mar 2026 cannot be read: a later version of the program kept it.* left as it"
                                + " is.*"))
                .anyMatch(p -> p.matches("The budget of Mon 2 Mar 2026 cannot be read: .*0206-\\d\\d-\\d\\d.*"))
                .anyMatch(p -> p.startsWith("The budget of Tue 3 Mar 2026 cannot be read: "))
                .anyMatch(p -> p.matches("The budget of Wed 4 Mar 2026 cannot be read: .* not all in USD.*"));
        test(find(Button.class).withText("Keep today's budget").single()).click();
        assertThat(paragraphs()).anyMatch(p -> p.matches("Against the budget of .*: as it was to be\\."));
        assertThat(documents()).hasSize(6).containsAll(before);

        test(find(Button.class).withText("Remove the budget of Tue 3 Mar 2026").single())
                .click();
        test(find(Button.class).withText("Press again: nothing brings it back").single())
                .click();
        assertThat(documents()).hasSize(5).doesNotContain(whole.substring(0, 400));
    }

    private void putAside(String on, String document) {
        sql.sql("insert into baseline (id, homestead_id, kept_on, made_at, document) values (?, ?, ?, ?, ?)")
                .params(UUID.randomUUID(), place, LocalDate.parse(on), OffsetDateTime.parse(on + "T12:00Z"), document)
                .update();
    }

    private List<String> documents() {
        return sql.sql("select document from baseline where homestead_id = ?")
                .param(place)
                .query((row, number) -> row.getString(1))
                .list();
    }

    private NativeButton figure(String text) {
        return find(NativeButton.class).all().stream()
                .filter(b -> b.getText().equals(text))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aPageThatWasLeftIsToldNothing() {
        openSpendWithABudgetKept();
        SpendView left = find(SpendView.class).single();
        navigate("stages", Div.class);
        enter("5.00 USD");
        runPendingSignalsTasks();
        assertThat(left.isAttached()).isFalse();
        assertThat(left.getElement().getTextRecursively()).doesNotContain("$5.00");
    }

    @Test
    void whatFinishedWorkCostLeadsToItsReceiptsWhichAddUpToIt() {
        openSpendWithABudgetKept();
        open("The figures underneath");
        String cost = linksTo("spend/receipts?work=finished").getFirst();
        test(find(NativeButton.class).all().get(1)).click();
        assertThat(tables()).contains("Gravel the track to the tank base");
        List<String> stages = Stream.of("water-track", "shop-topsoil", "cabin-holes")
                .flatMap(s -> linksTo("spend/receipts?stage=" + s).stream())
                .toList();
        assertThat(stages.stream().map(SpendPageTest::usd).reduce(Money::add)).contains(usd(cost));

        ask("work=finished");
        assertThat(find(Div.class)
                        .withClassName("fs-figures")
                        .single()
                        .getElement()
                        .getTextRecursively())
                .startsWith("Spent" + cost);
        ComboBox<?> work = find(ComboBox.class).withCaption("Work").single();
        work.clear();
        assertThat(find(ComboBox.class).withCaption("Work").all()).isEmpty();
        assertThat(find(Div.class)
                        .withClassName("fs-figures")
                        .single()
                        .getElement()
                        .getTextRecursively())
                .doesNotStartWith("Spent" + cost);
    }

    @Test
    void whatIsCommittedLeadsToTheOrdersAloneWhichAddUpToIt() {
        navigate("spend", Div.class);
        String orders = "spend/receipts?subproject=water&state=ordered";
        String committed = linksTo(orders).getFirst();
        assertThat(linksTo("spend/receipts?state=ordered")).contains(committed);
        assertThat(linksTo("spend/receipts?subproject=water")).isNotEmpty().doesNotContain(committed);
        ask("subproject=water&state=ordered");
        assertThat(items()).hasSize(1);
        assertThat(find(Div.class)
                        .withClassName("fs-figures")
                        .single()
                        .getElement()
                        .getTextRecursively())
                .contains("On order, still to pay" + committed);
    }

    @Test
    void receiptsOfOneMaterialSayThatTheyAreNarrowedByItAndLetGo() {
        navigate("spend/receipts", Div.class);
        int all = items().size();
        ask("kind=material&material=-");
        assertThat(items()).isNotEmpty().hasSizeLessThan(all);
        ComboBox<?> material = find(ComboBox.class).withCaption("Material").single();
        assertThat(material.getValue()).isEqualTo("-");
        material.clear();
        assertThat(find(ComboBox.class).withCaption("Material").all()).isEmpty();
        assertThat(find(ComboBox.class).withCaption("Paid for").single().getValue())
                .isEqualTo(LineKind.MATERIAL);
    }

    private static Money usd(String shown) {
        return Cash.parse(shown.substring(1).replace(",", "") + " USD");
    }

    private static void ask(String query) {
        UI.getCurrent().navigate("spend/receipts", QueryParameters.fromString(query));
    }
}
