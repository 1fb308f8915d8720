package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.trade.takeoff.cutting.CutPlan;
import org.firmset.trade.takeoff.cutting.CuttingStock;
import org.firmset.trade.takeoff.cutting.Demand;
import org.firmset.trade.takeoff.cutting.Pattern;
import org.firmset.trade.takeoff.cutting.Stock;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.CutBar;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Table;
import org.firmset.trade.trace.Whole;
import org.firmset.trade.trace.Worksheet;

@Described(
        "Pieces cut from bars, boards or pipes with the least waste, and whether it is proven that there is no better way.")
public record CutList(
        @Described("The pieces, such as '8 x 112 in, 10 x 88 in'.")
        Pieces pieces,

        @Described(value = "Lengths that can be bought, such as '20 ft' or '20 ft, 10 ft'.", usual = "20 ft")
        Pieces stock,

        @Described(value = "Left-overs at hand that may be used up, such as '3 x 7 ft'.", usual = "none")
        Pieces offcuts,

        @Described(
                value = "Width of a cut: 0 for shears, a saw takes more.",
                least = "0 mm",
                most = "12 mm",
                usual = "1/8 in")
        Length kerf,

        @Described(
                value = "Left-overs from this length on are worth keeping.",
                least = "0 m",
                most = "6 m",
                usual = "2 ft")
        Length keepFrom) {

    /** A sixteenth of an inch, a thirty-second and a millimetre are all whole numbers of these. */
    private static final double UNITS_PER_METRE = 160_000;

    private static final double LONGEST_STOCK = 18;

    /** Lengths and numbers of one kind of left-over. */
    private record Left(double length, int count) {}

    public Worksheet work() {
        refuse();
        List<Stock> stocks = stocks();
        List<Demand> demands =
                // down: so many pieces as divide a bar must not fail by what nine decimals round off
                pieces.all().stream()
                        .map(p -> new Demand(Whole.down(p.length().amount() * UNITS_PER_METRE), p.count()))
                        .toList();
        CutPlan plan = CuttingStock.plan(stocks, demands, units(kerf))
                .orElseThrow(() -> new Refusal(
                        "pieces",
                        pieces,
                        "do not all find room in this stock",
                        "Enter longer stock or shorter pieces"));
        return new Writer(plan, stocks).sheet();
    }

    private void refuse() {
        if (pieces.all().isEmpty()) {
            throw new Refusal("pieces", pieces, "names no piece", "Enter at least one, such as '8 x 112 in'");
        }
        if (stock.all().isEmpty()) {
            throw new Refusal("stock", stock, "names no length", "Enter at least one, such as '20 ft'");
        }
        if (stock.count() > stock.all().size()) {
            throw new Refusal(
                    "stock",
                    stock,
                    "has a number in it",
                    "Enter only lengths that can be bought; what is at hand belongs to the offcuts");
        }
        refuseLong("stock", stock);
        refuseLong("offcuts", offcuts);
        double longest = longest(stock);
        double piece = longest(pieces);
        if (piece > Math.max(longest, longest(offcuts)) + 1e-9) {
            throw new Refusal(
                    "pieces",
                    Length.ofMetres(piece),
                    "is longer than the longest stock, " + Length.ofMetres(longest),
                    "Enter longer stock, or divide the piece with a lap or joint");
        }
    }

    private static void refuseLong(String input, Pieces list) {
        if (longest(list) > LONGEST_STOCK) {
            throw new Refusal(input, list, "is longer than 18 m", Enter.atMost(LONGEST_STOCK));
        }
    }

    private static double longest(Pieces list) {
        return list.all().stream().mapToDouble(p -> p.length().amount()).max().orElse(0);
    }

    private static long units(Length length) {
        return Math.round(length.amount() * UNITS_PER_METRE);
    }

    /** What is bought costs its length, so much that no sum of left-overs outweighs it; left-overs cost theirs. */
    private List<Stock> stocks() {
        long leftOvers = Math.round(offcuts.total() * 1000);
        List<Stock> stocks = new ArrayList<>();
        stock.all()
                .forEach(s -> stocks.add(
                        new Stock(units(s.length()), millimetres(s.length()) * (leftOvers + 1), Stock.UNLIMITED)));
        offcuts.all().forEach(o -> stocks.add(new Stock(units(o.length()), millimetres(o.length()), o.count())));
        return stocks;
    }

    private static long millimetres(Length length) {
        return Math.round(length.amount() * 1000);
    }

    /** Writes the plan as a worksheet. */
    private final class Writer {
        private final CutPlan plan;
        private final List<Stock> stocks;
        private final Sheet sheet = new Sheet();

        Writer(CutPlan plan, List<Stock> stocks) {
            this.plan = plan;
            this.stocks = stocks;
        }

        Worksheet sheet() {
            addBought();
            addProof();
            addCuts();
            return sheet.done();
        }

        private double length(int index) {
            return stocks.get(index).length() / UNITS_PER_METRE;
        }

        private void addBought() {
            double bought = 0;
            for (int k = 0; k < stock.all().size(); k++) {
                int used = plan.used(k);
                bought += used * length(k);
                Amount length = Amount.length(length(k));
                sheet.add(Line.material(
                                k == 0 ? "bars" : "bars-" + (k + 1),
                                "To buy" + (stock.all().size() == 1 ? "" : ", length " + (k + 1)),
                                Amount.packs(used, "pieces"))
                        .by("least total length, whole pieces", term("l", "length of one", length))
                        .from(Sources.CUTTING));
            }
            sheet.add(Line.step("wanted", "Pieces wanted", Amount.count(pieces.count(), "pieces")));
            sheet.add(Line.step("net", "Length of the pieces", Amount.length(pieces.total())));
            sheet.add(Line.step("bought", "Length bought", Amount.length(bought)));
        }

        private void addProof() {
            boolean oneLength = stock.all().size() == 1 && offcuts.all().isEmpty();
            long unit = oneLength ? stocks.getFirst().cost() : 1;
            if (oneLength) {
                sheet.add(Line.step(
                                "bound",
                                "No way of cutting needs fewer than",
                                Amount.count(plan.bound() / unit, "pieces"))
                        .by("fractions of pieces allowed, rounded up, or all ways tried")
                        .from(Sources.CUTTING));
            }
            sheet.add(Line.answer(
                            "proven",
                            "Least waste that is possible",
                            Amount.word(plan.proven() ? "yes, proven" : "not proven"))
                    .by("the plan costs what the bound says")
                    .from(Sources.CUTTING));
            if (!plan.proven()) {
                sheet.add(Finding.warning("This is a good way of cutting, but a better one may exist"
                        + (oneLength ? " with " + plan.bound() / unit + " pieces." : ".")
                        + (plan.solved() ? "" : " The solver is not there on this machine.")));
            }
        }

        private void addCuts() {
            List<List<Amount>> rows = new ArrayList<>();
            List<Left> kept = new ArrayList<>();
            double waste = 0;
            for (Map.Entry<Pattern, Integer> use : inOrder()) {
                CutBar bar = bar(use.getKey(), use.getValue());
                sheet.add(bar);
                rows.add(List.of(
                        Amount.count(bar.times(), ""),
                        Amount.length(bar.stock()),
                        Amount.word(Integer.toString(bar.pieces().size())),
                        Amount.length(bar.left())));
                if (bar.left() >= keepFrom.amount() && bar.left() > 0) {
                    kept.add(new Left(bar.left(), bar.times()));
                } else {
                    waste += bar.left() * bar.times();
                }
            }
            sheet.add(Line.answer("waste", "Left-overs too short to keep", Amount.length(waste)));
            addKept(kept);
            sheet.add(new Table("Bars and left-overs", List.of("Times", "From", "Pieces", "Left over"), rows));
        }

        private List<Map.Entry<Pattern, Integer>> inOrder() {
            return plan.uses().entrySet().stream()
                    .sorted(Comparator.comparingInt((Map.Entry<Pattern, Integer> e) ->
                                    e.getKey().stock())
                            .thenComparing(e -> e.getKey().pieces().toString(), Comparator.reverseOrder()))
                    .toList();
        }

        private CutBar bar(Pattern pattern, int times) {
            List<Double> cut = new ArrayList<>();
            for (int i = 0; i < pieces.all().size(); i++) {
                for (int n = pattern.pieces().get(i); n > 0; n--) {
                    cut.add(pieces.all().get(i).length().amount());
                }
            }
            cut.sort(Comparator.reverseOrder());
            double net = cut.stream().mapToDouble(d -> d).sum();
            double whole = length(pattern.stock());
            // no cut after the last piece where nothing is left
            double left = Math.max(0, whole - net - cut.size() * kerf.amount());
            return new CutBar(times, whole, cut, left < 1e-6 ? 0 : left);
        }

        private void addKept(List<Left> kept) {
            if (!kept.isEmpty()) {
                String list = kept.stream()
                        .sorted(Comparator.comparingDouble(Left::length).reversed())
                        .map(l -> l.count() + " x " + Length.ofMetres(Whole.down(l.length() * 1000) / 1000.0))
                        .reduce((a, b) -> a + ", " + b)
                        .orElse("");
                sheet.add(Line.step("kept", "Left-overs to keep", Amount.word(list)));
                sheet.add(Finding.note("Enter the left-overs to keep as offcuts of a later cut list: '" + list + "'."));
            }
        }
    }
}
