package org.firmset.season.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firmset.homestead.Material;
import org.firmset.season.words.Dates;
import org.firmset.season.words.WordTable;
import org.firmset.spend.PriceBook;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** Prices, tools and what lies on site, in sentences and tables. */
public final class ThingWords {
    private final MoneyReport report;
    private final Names names;

    public ThingWords(MoneyReport report) {
        this.report = report;
        names = new Names(report.homestead());
    }

    /** The latest price of every material at every supplier, and how it moved since its first. */
    public WordTable prices() {
        List<List<String>> rows = new ArrayList<>();
        for (Material material : report.homestead().materials()) {
            report.prices().quotes().stream()
                    .filter(q -> q.material().equals(material.key()))
                    .map(PriceBook.Quote::supplier)
                    .distinct()
                    .forEach(s -> report.prices()
                            .latest(material.key(), s, report.today())
                            .ifPresent(q -> rows.add(List.of(
                                    material.name(),
                                    names.supplier(s),
                                    show(q.amount()),
                                    Dates.date(q.on()),
                                    trend(material.key(), s)))));
        }
        return new WordTable(
                "Latest prices", List.of("Material", "Supplier", "A pack", "Asked on", "Since the first"), rows);
    }

    private String trend(String material, String supplier) {
        Optional<PriceBook.Trend> trend = report.prices().trend(material, supplier);
        return trend.map(t -> {
                    int sign = t.changePercent().signum();
                    return sign == 0
                            ? "as much since " + Dates.date(t.first().on())
                            : "%s %% %s since %s"
                                    .formatted(
                                            t.changePercent()
                                                    .abs()
                                                    .setScale(1, RoundingMode.HALF_EVEN)
                                                    .toPlainString(),
                                            sign > 0 ? "up" : "down",
                                            Dates.date(t.first().on()));
                })
                .orElse("no earlier one");
    }

    /** @param material null for all packs */
    public String rise(@Nullable String material, BigDecimal percent) {
        Money more = report.riseOf(material, percent);
        String what = material == null ? "all packs" : names.material(material);
        Money then = report.forecast().whole().expected().add(more);
        return "%s of %s %% on %s makes %s %s; everything then comes to %s."
                .formatted(
                        percent.signum() < 0 ? "A fall" : "A rise",
                        percent.abs().toPlainString(),
                        what,
                        show(more.abs()),
                        percent.signum() < 0 ? "less" : "more",
                        show(then));
    }

    /** Hire or buy, a sentence for each tool that is not there yet. */
    public List<String> tools() {
        return report.tools().stream().map(this::tool).toList();
    }

    private String tool(ToolChoice tool) {
        String uses = "%s: %d %s on %d %s."
                .formatted(
                        tool.name(),
                        tool.days(),
                        tool.days() == 1 ? "day" : "days",
                        tool.trips(),
                        tool.trips() == 1 ? "trip" : "trips");
        Money buying = tool.buying();
        Money hiring = tool.hiring();
        if (buying == null || hiring == null) {
            return "%s %s it costs %s.".formatted(uses, tool.buy() ? "Buying" : "Hiring", show(tool.cost()));
        }
        String from = tool.buyFrom()
                .map(n -> " Buying is cheaper from %d such %s on.".formatted(n, n == 1 ? "trip" : "trips"))
                .orElse("");
        return "%s Buying and selling again costs %s, hiring %s: better %s, and %s saved.%s"
                .formatted(
                        uses,
                        show(buying),
                        show(hiring),
                        tool.buy() ? "buy" : "hire",
                        show(buying.subtract(hiring).abs()),
                        from);
    }

    /** What lies on site and what will be left of it, by what was paid for it. */
    public WordTable leftOver() {
        List<List<String>> rows = report.leftOver().stream()
                .map(l -> List.of(
                        names.material(l.material()),
                        Integer.toString(l.onSite()),
                        show(l.worth())
                                + (l.withoutReceipt() > 0 ? ", " + l.withoutReceipt() + " without a receipt" : ""),
                        l.left() == 0 ? WordTable.NONE : l.left() + ", worth " + show(l.leftWorth()),
                        l.goneOff() == 0 ? WordTable.NONE : l.goneOff() + ", cost " + show(l.lost())))
                .toList();
        return new WordTable(
                "What lies on site",
                List.of("Material", "Packs now", "Worth", "Left at the finish", "Goes off unused"),
                rows);
    }

    private String show(Money amount) {
        return report.show(amount);
    }
}
