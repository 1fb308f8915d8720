package org.firmset.season.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Span;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.firmset.homestead.Homestead;
import org.firmset.measure.Cash;
import org.firmset.season.TwoWeekendsFile;
import org.firmset.season.money.Books;
import org.firmset.season.money.Changed;
import org.firmset.season.money.MoneyReport;
import org.firmset.spend.LineKind;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.ReceiptState;
import org.firmset.spend.Share;
import org.javamoney.moneta.Money;
import org.junit.jupiter.api.Test;

/** Parts of the page of money by themselves, where there is little or nothing to show. */
class MoneyPanelsTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final Homestead PLACE = TwoWeekendsFile.read();

    private static MoneyReport report(Homestead homestead, List<Receipt> receipts) {
        return MoneyReport.of(new Books(homestead, null, receipts, TODAY));
    }

    @Test
    void a_homestead_without_subprojects_and_receipts_has_a_card_of_the_whole() {
        Homestead empty =
                Changed.with(Changed.with(PLACE, "stages", List.of()).withStages(List.of()), "subprojects", List.of());
        assertThat(in(new StandPanel(report(empty, List.of()), new Unfolded()), H3.class))
                .extracting(H3::getText)
                .containsExactly("All together");
    }

    /** More was given back than spent: what is still to pay is not longer than the whole bar. */
    @Test
    void no_bar_is_longer_than_its_frame() {
        Money back = Cash.parse("-400.00 EUR");
        ReceiptLine line = new ReceiptLine(
                LineKind.OTHER,
                "Old boards",
                null,
                BigDecimal.ONE.negate(),
                null,
                back,
                List.of(Share.all("wood-store", null)));
        Money none = Cash.parse("0 EUR");
        Receipt returned =
                new Receipt("r", TODAY, "Yard", ReceiptState.RETURNED, List.of(line), none, none, none, null, null);
        Homestead little = Changed.with(
                PLACE,
                "subprojects",
                PLACE.subprojects().stream()
                        .map(s -> Changed.with(
                                org.firmset.homestead.Subproject.class, s, "budget", Cash.parse("10.00 EUR")))
                        .toList());
        List<Double> widths = in(StandingCard.cards(report(little, List.of(returned))), Span.class).stream()
                .map(s -> s.getStyle().get("width"))
                .filter(w -> w != null && w.endsWith("%"))
                .map(w -> Double.valueOf(w.substring(0, w.length() - 1)))
                .toList();
        assertThat(widths).isNotEmpty().allMatch(w -> w <= 100);
    }

    private static <C extends Component> List<C> in(Component root, Class<C> type) {
        return Stream.concat(
                        Stream.of(root).filter(type::isInstance).map(type::cast),
                        root.getChildren().flatMap(c -> in(c, type).stream()))
                .toList();
    }
}
