package org.firmset.spend;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;

/** Photos and papers that can be kept beside a receipt, known by their first bytes and never by their name. */
public enum DocumentType {
    JPEG("image/jpeg"),
    PNG("image/png"),
    WEBP("image/webp"),
    HEIC("image/heic"),
    PDF("application/pdf");

    private static final byte[] JPEG_START = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF};
    private static final byte[] PNG_START = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    /** Brands of still pictures in an ISO 14496-12 box, from ISO 23008-12. */
    private static final Set<String> HEIC_BRANDS = Set.of("heic", "heix", "heim", "heis", "mif1");

    private final String mediaType;

    DocumentType(String mediaType) {
        this.mediaType = mediaType;
    }

    public String mediaType() {
        return mediaType;
    }

    /** What these bytes are; empty when they are none of the types that are kept. */
    static Optional<DocumentType> of(byte[] content) {
        if (startsWith(content, JPEG_START)) {
            return Optional.of(JPEG);
        }
        if (startsWith(content, PNG_START)) {
            return Optional.of(PNG);
        }
        if (text(content, 0, 4).equals("RIFF") && text(content, 8, 12).equals("WEBP")) {
            return Optional.of(WEBP);
        }
        if (text(content, 4, 8).equals("ftyp") && HEIC_BRANDS.contains(text(content, 8, 12))) {
            return Optional.of(HEIC);
        }
        return text(content, 0, 5).equals("%PDF-") ? Optional.of(PDF) : Optional.empty();
    }

    private static boolean startsWith(byte[] content, byte[] start) {
        return content.length >= start.length && Arrays.equals(content, 0, start.length, start, 0, start.length);
    }

    private static String text(byte[] content, int from, int to) {
        return content.length < to ? "" : new String(content, from, to - from, ISO_8859_1);
    }
}
