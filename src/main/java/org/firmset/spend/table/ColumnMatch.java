package org.firmset.spend.table;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Which column of a table holds what, and what people were asked about it. Guessed by {@link ColumnGuess}, changed with
 * the {@code with} methods, remembered as {@link #text()} under the table's {@link SpendTable#fingerprint()}.
 *
 * @param columns the column of each role, from 0
 * @param dates order of the dates; null to find it out
 * @param marks decimal marks that were said; the others are found out
 * @param outNegative money that went out is written with a minus, as in statements of an account
 */
public record ColumnMatch(
        Map<Role, Integer> columns, @Nullable DateOrder dates, Map<Role, DecimalMark> marks, boolean outNegative) {
    private static final Pattern PART = Pattern.compile("([a-z-]+)=([a-z0-9-]+)(?:/(point|comma))?");
    private static final int MOST_COLUMNS = 200;

    public ColumnMatch {
        columns = Map.copyOf(columns);
        marks = Map.copyOf(marks);
    }

    public Optional<Integer> column(Role role) {
        return Optional.ofNullable(columns.get(role));
    }

    /** The same with this column for the role; none for null. */
    public ColumnMatch with(Role role, @Nullable Integer column) {
        Map<Role, Integer> changed = new EnumMap<>(Role.class);
        changed.putAll(columns);
        changed.remove(role);
        if (column != null) {
            changed.put(role, column);
        }
        return new ColumnMatch(changed, dates, marks, outNegative);
    }

    public ColumnMatch with(DateOrder order) {
        return new ColumnMatch(columns, order, marks, outNegative);
    }

    public ColumnMatch with(Role role, DecimalMark mark) {
        Map<Role, DecimalMark> changed = new EnumMap<>(Role.class);
        changed.putAll(marks);
        changed.put(role, mark);
        return new ColumnMatch(columns, dates, changed, outNegative);
    }

    public ColumnMatch withOutNegative(boolean negative) {
        return new ColumnMatch(columns, dates, marks, negative);
    }

    /** In one line that {@link #parse} reads back: "date=0;supplier=1;amount=3/comma;dates=day-first". */
    public String text() {
        List<String> parts = new ArrayList<>();
        for (Role role : Role.values()) {
            Integer column = columns.get(role);
            DecimalMark mark = marks.get(role);
            if (column != null) {
                parts.add(role.word() + "=" + column + (mark == null ? "" : "/" + lower(mark)));
            }
        }
        if (dates != null) {
            parts.add("dates=" + lower(dates));
        }
        if (outNegative) {
            parts.add("out=negative");
        }
        return String.join(";", parts);
    }

    /** @throws IllegalArgumentException when the text was not written by {@link #text()} */
    public static ColumnMatch parse(String text) {
        ColumnMatch match = new ColumnMatch(Map.of(), null, Map.of(), false);
        for (String part : text.split(";")) {
            Matcher matcher = PART.matcher(part);
            if (!matcher.matches()) {
                throw new IllegalArgumentException("part [" + part + "] of a column match is not understood");
            }
            match = match.withPart(matcher.group(1), matcher.group(2), matcher.group(3));
        }
        return match;
    }

    private ColumnMatch withPart(String name, String value, @Nullable String mark) {
        if (name.equals("dates")) {
            return with(DateOrder.valueOf(upper(value)));
        }
        if (name.equals("out")) {
            return withOutNegative(value.equals("negative"));
        }
        Role role = Role.valueOf(upper(name));
        int column = Integer.parseInt(value);
        if (column > MOST_COLUMNS) {
            throw new IllegalArgumentException("column [" + value + "] of a column match is over " + MOST_COLUMNS);
        }
        ColumnMatch changed = with(role, Integer.valueOf(column));
        return mark == null ? changed : changed.with(role, DecimalMark.valueOf(upper(mark)));
    }

    private static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String upper(String word) {
        return word.toUpperCase(Locale.ROOT).replace('-', '_');
    }
}
