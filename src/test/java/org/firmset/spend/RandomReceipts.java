package org.firmset.spend;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** Sound receipts of all kinds that depend on nothing but the seed, with texts that try a table. */
public final class RandomReceipts {
    public static final long SEED = Long.getLong("firmset.seed", 20261125);
    public static final Keys KEYS = new Keys(
            Set.of("water", "shop", "cabin"),
            Map.of("water-track", "water", "shop-base", "shop", "cabin-holes", "cabin", "cabin-piers", "cabin"),
            Set.of("concrete-80", "rebar-4"));
    private static final List<String> TEXTS = List.of(
            "Concrete mix, 80 lb",
            "=SUM(A1)",
            "+1 free",
            "-20 % today",
            "@home",
            "'quoted",
            "said \"now\"",
            "two\r\nlines",
            "semi;colon",
            "Stra\u00dfe \u4e2d\u6587 \ud83d\udd28",
            "tab\there",
            "  padded  ",
            "'=both",
            "''twice");

    private final SplittableRandom random;
    private int count;

    public RandomReceipts(long seed) {
        random = new SplittableRandom(seed);
    }

    public List<Receipt> many(int number) {
        List<Receipt> receipts = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            receipts.add(next());
        }
        return receipts;
    }

    public Receipt next() {
        ReceiptState state = one(ReceiptState.values());
        int sign = state == ReceiptState.RETURNED ? -1 : 1;
        List<ReceiptLine> lines = new ArrayList<>();
        int size = 1 + random.nextInt(5);
        for (int i = 0; i < size; i++) {
            lines.add(line(sign));
        }
        long sum =
                lines.stream().mapToLong(l -> Math.abs(Cash.cents(l.amount()))).sum();
        long tax = sign * upTo(sum / 5);
        long discount = sign * (random.nextBoolean() ? 0 : upTo(sum));
        long total = sign * sum - discount + tax;
        LocalDate date = LocalDate.of(2025, 1, 1).plusDays(random.nextInt(700));
        LocalDate restOn = restOn(state, date);
        long deposit = state == ReceiptState.ORDERED || (restOn != null && random.nextInt(4) > 0) ? upTo(total) : 0;
        return new Receipt(
                "r-" + count++,
                date,
                one(TEXTS.toArray(String[]::new)) + " " + random.nextInt(50),
                state,
                lines,
                usd(tax),
                usd(discount),
                usd(deposit),
                restOn,
                random.nextBoolean() ? usd(total) : null,
                random.nextInt(3) == 0 ? ContentHash.of(new byte[] {(byte) count}) : null);
    }

    /** Some of the day of the order itself. */
    private @Nullable LocalDate restOn(ReceiptState state, LocalDate date) {
        boolean has = random.nextInt(state == ReceiptState.ORDERED ? 2 : 4) == 0;
        return has && state != ReceiptState.RETURNED ? date.plusDays(Math.max(0, random.nextInt(100) - 9)) : null;
    }

    private ReceiptLine line(int sign) {
        BigDecimal quantity = BigDecimal.valueOf(1 + random.nextInt(200_000), 3);
        Money price = usd(upTo(50_000));
        Money amount = Cash.of(quantity.multiply(Cash.amountOf(price)).setScale(2, RoundingMode.HALF_UP), "USD");
        boolean priced = random.nextBoolean();
        return new ReceiptLine(
                one(LineKind.values()),
                one(TEXTS.toArray(String[]::new)),
                random.nextInt(3) == 0 ? "rebar-4" : null,
                quantity.multiply(BigDecimal.valueOf(sign)),
                priced ? price : null,
                (priced ? amount : usd(upTo(99_999_999))).multiply(sign),
                shares());
    }

    private List<Share> shares() {
        List<Share> shares = new ArrayList<>();
        int size = random.nextInt(4);
        for (int i = 0; i < size; i++) {
            @Nullable
            String stage = random.nextBoolean()
                    ? one(KEYS.stages().keySet().stream().sorted().toArray(String[]::new))
                    : null;
            String subproject = stage == null ? "shop" : stage.substring(0, stage.indexOf('-'));
            shares.add(new Share(subproject, stage, BigDecimal.valueOf(1 + random.nextInt(9_999), random.nextInt(4))));
        }
        return shares;
    }

    private long upTo(long most) {
        return random.nextLong(most + 1);
    }

    private static Money usd(long cents) {
        return Cash.ofCents(cents, "USD");
    }

    @SafeVarargs
    private <T> T one(T... of) {
        return of[random.nextInt(of.length)];
    }
}
