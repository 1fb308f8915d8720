package org.firmset.season.ui;

import java.util.Locale;

/** Pieces of a drawing as text. */
final class Svg {
    /** What a letter of the drawings' text takes at the most, on average. */
    private static final double LETTER = 6.3;

    private Svg() {}

    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    /** Numbers with a point, whatever the machine's language. */
    static String format(String format, Object... arguments) {
        return String.format(Locale.ROOT, format, arguments);
    }

    static double width(String text) {
        return text.length() * LETTER;
    }

    /** As much of it as fits; nothing when that says nothing. */
    static String cut(String text, double width) {
        int letters = (int) (width / LETTER);
        if (text.length() <= letters) {
            return text;
        }
        return letters < 2 ? "" : text.substring(0, letters - 1).stripTrailing() + "…";
    }

    /** In a frame: only what stands inside the first element is parsed as a drawing. */
    static String framed(String look, int width, int height, String label, CharSequence drawing) {
        return ("<div><svg class=\"fs-drawing %1$s\" width=\"%2$d\" height=\"%3$d\" viewBox=\"0 0 %2$d %3$d\""
                                + " role=\"img\" aria-label=\"%4$s\">")
                        .formatted(look, width, height, escaped(label))
                + drawing + "</svg></div>";
    }
}
