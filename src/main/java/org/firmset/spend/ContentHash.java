package org.firmset.spend;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * SHA-256 (FIPS 180-4) of a file's bytes: the same file has the same one wherever it lies.
 *
 * @param hex 64 lower-case hexadecimal digits
 */
public record ContentHash(String hex) {
    public ContentHash {
        if (!hex.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException(
                    "hex [" + hex + "] of a content hash must be 64 lower-case hexadecimal digits");
        }
    }

    public static ContentHash of(byte[] content) {
        try {
            return new ContentHash(HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(content)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
