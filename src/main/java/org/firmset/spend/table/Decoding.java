package org.firmset.spend.table;

import static java.nio.charset.StandardCharsets.UTF_16BE;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.util.Optional;

/**
 * Bytes as text: UTF-16 and UTF-8 by their byte order marks, otherwise UTF-8 where it is valid, otherwise Windows-1252,
 * which older spreadsheets write.
 */
record Decoding(String text, Charset charset) {
    private static final Charset WINDOWS = Charset.forName("windows-1252");

    /** Empty when the bytes are text in none of these. */
    static Optional<Decoding> of(byte[] bytes) {
        if (startsWith(bytes, 0xFF, 0xFE)) {
            return decode(bytes, 2, UTF_16LE);
        }
        if (startsWith(bytes, 0xFE, 0xFF)) {
            return decode(bytes, 2, UTF_16BE);
        }
        if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
            return decode(bytes, 3, UTF_8);
        }
        return decode(bytes, 0, UTF_8).or(() -> decode(bytes, 0, WINDOWS));
    }

    private static boolean startsWith(byte[] bytes, int... start) {
        if (bytes.length < start.length) {
            return false;
        }
        for (int i = 0; i < start.length; i++) {
            if ((bytes[i] & 0xFF) != start[i]) {
                return false;
            }
        }
        return true;
    }

    private static Optional<Decoding> decode(byte[] bytes, int from, Charset charset) {
        try {
            String text = charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes, from, bytes.length - from))
                    .toString();
            return text.indexOf('\0') < 0 ? Optional.of(new Decoding(text, charset)) : Optional.empty();
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }
}
