package org.firmset.spend.table;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.firmset.homestead.file.Fault;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;

/**
 * Numbers as people and their programs write them: "$1,240.00", "1.240,00 EUR", "(12.40)", "12,40-".
 */
public final class Numbers {
    private static final int LONGEST = 40;
    private static final Pattern PLAIN = Pattern.compile("\\d{1,9}(?:\\.\\d{1,9})?|\\.\\d{1,9}");
    private static final Pattern THOUSANDS = Pattern.compile("(?<=\\d),(?=\\d{3}(?!\\d))");
    private static final Pattern SPACED = Pattern.compile("(?<=\\d)[\\s\\u00a0\\u202f'\\u2019](?=\\d{3}(?!\\d))");

    private final String code;
    private final String sign;

    Numbers(String currency) {
        code = currency;
        sign = Currency.getInstance(currency).getSymbol(Locale.US);
    }

    /**
     * A number by itself, as somebody types it; empty when it is none, or when "1,234" leaves open what it means.
     *
     * @param currency ISO 4217 code of the currency whose sign or code may stand beside it
     */
    public static Optional<BigDecimal> typed(String text, String currency) {
        Numbers numbers = new Numbers(currency);
        List<Fault> unclear = new ArrayList<>();
        return numbers.mark(List.of(new Cell(1, "", text.strip())), unclear)
                .filter(mark -> unclear.isEmpty())
                .flatMap(mark -> numbers.read(text.strip(), mark));
    }

    /** A sum of money of zero or more, to the hundredth, as somebody types it: three digits behind a comma are no cents. */
    public static Optional<Money> amount(String text, String currency) {
        return typed(THOUSANDS.matcher(text).replaceAll(""), currency)
                .filter(n -> n.signum() >= 0 && n.stripTrailingZeros().scale() <= 2)
                .map(n -> Cash.of(n, currency));
    }

    /** As it is read back by itself: never with three decimals, which could be read as thousands. */
    public static String written(BigDecimal number) {
        return (number.scale() == 3 ? number.setScale(4) : number).toPlainString();
    }

    String currency() {
        return code;
    }

    /** The mark that a whole column uses before its decimals; points when nothing speaks against them. */
    Optional<DecimalMark> mark(Iterable<Cell> cells, List<Fault> faults) {
        Cell settled = null;
        DecimalMark mark = null;
        Cell unsure = null;
        for (Cell cell : cells) {
            String digits = unsigned(bare(cell.text()));
            if (isUnsure(digits)) {
                unsure = unsure == null ? cell : unsure;
                continue;
            }
            DecimalMark its = markOf(digits).orElse(mark);
            if (mark != null && its != mark && settled != null) {
                faults.add(cell.fault(
                        "has its decimals behind another mark than '" + settled.text() + "' in line " + settled.line(),
                        "Write all numbers of the column alike, with a point or with a comma"));
                return Optional.empty();
            }
            settled = its == null ? settled : cell;
            mark = its;
        }
        if (mark == null && unsure != null) {
            faults.add(unsure.fault(
                    "can be thousands or decimals, and nothing in the column says which",
                    "Say whether decimals stand behind a point or a comma"));
            return Optional.empty();
        }
        return Optional.of(mark == null ? DecimalMark.POINT : mark);
    }

    /** "1,234" and "1.234". */
    private static boolean isUnsure(String digits) {
        return digits.matches("[1-9]\\d{0,2}[.,]\\d{3}");
    }

    private static Optional<DecimalMark> markOf(String digits) {
        int point = digits.lastIndexOf('.');
        int comma = digits.lastIndexOf(',');
        if (point < 0 && comma < 0) {
            return Optional.empty();
        }
        boolean pointLast = point > comma;
        char last = pointLast ? '.' : ',';
        boolean several = digits.indexOf(last) != digits.lastIndexOf(last);
        return Optional.of(pointLast == several ? DecimalMark.COMMA : DecimalMark.POINT);
    }

    /** The number a cell holds; empty when it is none. */
    Optional<BigDecimal> read(String cell, DecimalMark mark) {
        String bare = bare(cell);
        String digits = unsigned(bare);
        String grouped = Pattern.quote(String.valueOf(mark.grouping));
        if (digits.indexOf(mark.grouping) >= 0
                && !digits.matches(
                        "\\d{1,3}(?:" + grouped + "\\d{3})+(?:" + Pattern.quote("" + mark.mark) + "\\d+)?")) {
            return Optional.empty();
        }
        String plain = digits.replace(String.valueOf(mark.grouping), "").replace(mark.mark, '.');
        if (cell.length() > LONGEST || !PLAIN.matcher(plain).matches()) {
            return Optional.empty();
        }
        BigDecimal value = new BigDecimal(plain);
        return Optional.of(isNegative(bare) ? value.negate() : value);
    }

    /** Whether a cell looks like a number at all, whichever its mark. */
    boolean looksLike(String cell) {
        return read(cell, DecimalMark.POINT).isPresent()
                || read(cell, DecimalMark.COMMA).isPresent();
    }

    private String bare(String cell) {
        String bare = cell.length() > LONGEST
                ? ""
                : cell.replace('\u2212', '-').replace(code, "").replace(sign, "");
        return SPACED.matcher(bare.strip()).replaceAll("").replaceAll("[\\s\\u00a0]+(?=-$)|(?<=^-)\\s+", "");
    }

    private static boolean isNegative(String bare) {
        return bare.startsWith("-") || bare.endsWith("-") || isBracketed(bare);
    }

    private static boolean isBracketed(String bare) {
        return bare.startsWith("(") && bare.endsWith(")");
    }

    private static String unsigned(String bare) {
        if (isBracketed(bare)) {
            return bare.substring(1, bare.length() - 1);
        }
        if (bare.startsWith("-") || bare.startsWith("+")) {
            return bare.substring(1);
        }
        return bare.endsWith("-") ? bare.substring(0, bare.length() - 1) : bare;
    }
}
