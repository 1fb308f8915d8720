package org.firmset.trade.takeoff;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.firmset.measure.Dimension;
import org.firmset.measure.Length;
import org.firmset.measure.Units;
import org.firmset.measure.UnitsFault;

/** Lengths with their numbers, written such as "8 x 112 in, 10 x 88 in, 40 in". May be empty, written as "none". */
public record Pieces(List<Piece> all) {
    public static final Pieces NONE = new Pieces(List.of());
    private static final Pattern PIECE = Pattern.compile("\\s*(?:(\\d{1,4})\\s*[xX×]\\s*)?(\\S.*)");
    private static final String NOTHING = "none";
    private static final int LONGEST_TEXT = 2000;
    private static final int MOST_LENGTHS = 200;
    private static final int MOST_PIECES = 5000;
    /** A millimetre: less is no piece but a slip. */
    private static final BigDecimal LEAST_LENGTH = new BigDecimal("0.001");

    public Pieces {
        all = List.copyOf(all);
    }

    /** @param count 1 or more */
    public record Piece(int count, Length length) {}

    /** @throws UnitsFault when the text is no list of lengths */
    public static Pieces parse(String text) {
        if (text.strip().equalsIgnoreCase(NOTHING)) {
            return NONE;
        }
        if (text.length() > LONGEST_TEXT) {
            throw fault(text, "is too long");
        }
        List<Piece> pieces = new ArrayList<>();
        for (String part : text.split("[,;]", -1)) {
            pieces.add(piece(text, part));
        }
        Pieces result = new Pieces(pieces);
        if (pieces.size() > MOST_LENGTHS || result.count() > MOST_PIECES) {
            throw fault(text, "holds more than " + MOST_LENGTHS + " lengths or " + MOST_PIECES + " pieces");
        }
        if (result.toString().length() > LONGEST_TEXT) {
            throw fault(text, "is too long");
        }
        return result;
    }

    private static Piece piece(String text, String part) {
        Matcher matcher = PIECE.matcher(part);
        if (!matcher.matches()) {
            throw fault(text, "is no list of lengths");
        }
        int count = matcher.group(1) == null ? 1 : Integer.parseInt(matcher.group(1));
        Length length = (Length) Units.parse(Dimension.LENGTH, matcher.group(2).strip());
        if (count == 0 || length.value().compareTo(LEAST_LENGTH) < 0) {
            throw fault(text, "has a piece of no number or of less than a millimetre");
        }
        return new Piece(count, length);
    }

    private static UnitsFault fault(String text, String problem) {
        String shown = text.length() > 60 ? text.substring(0, 60) + "..." : text;
        return new UnitsFault(
                "'" + shown + "' " + problem + "; write numbers and lengths such as '8 x 112 in, 10 x 88 in'");
    }

    /** All pieces together. */
    public int count() {
        return all.stream().mapToInt(Piece::count).sum();
    }

    /** The sum of their lengths in metres. */
    public double total() {
        return all.stream().mapToDouble(p -> p.count() * p.length().amount()).sum();
    }

    @Override
    public String toString() {
        return all.isEmpty()
                ? NOTHING
                : all.stream().map(p -> p.count() + " x " + p.length()).collect(Collectors.joining(", "));
    }
}
