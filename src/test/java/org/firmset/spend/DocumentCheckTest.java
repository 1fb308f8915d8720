package org.firmset.spend;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.firmset.spend.DocumentCheck.Accepted;
import org.firmset.spend.DocumentCheck.Refused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files beside receipts are known by what is in them. */
class DocumentCheckTest {
    @ParameterizedTest
    @CsvSource({
        "JPEG, '\u00ff\u00d8\u00ff\u00e0..'",
        "PNG, '\u0089PNG\r\n\u001a\n....'",
        "WEBP, 'RIFF....WEBPVP8 '",
        "HEIC, '....ftypheic....'",
        "HEIC, '....ftypmif1....'",
        "PDF, '%PDF-1.7 ....'"
    })
    void known_types_are_accepted_by_their_first_bytes(DocumentType type, String start) {
        byte[] content = start.getBytes(ISO_8859_1);
        assertThat(DocumentCheck.of("photo.txt", content)).isEqualTo(new Accepted(type, ContentHash.of(content)));
    }

    @ParameterizedTest
    @CsvSource({"MZ program", "RIFF....WAVEfmt ", "....ftypisom....", "%PD", "<svg onload=x>"})
    void anything_else_is_refused_whatever_its_name_says(String start) {
        DocumentCheck check = DocumentCheck.of("photo.jpg", start.getBytes(US_ASCII));
        assertThat(check)
                .isInstanceOfSatisfying(
                        Refused.class,
                        r -> assertThat(r.fault().line())
                                .contains("[photo.jpg] is no JPEG, PNG, WebP or HEIC picture and no PDF")
                                .contains("Hand in a photo"));
    }

    @Test
    void empty_and_too_big_files_are_refused() {
        assertThat(((Refused) DocumentCheck.of("a.pdf", new byte[0])).fault().problem())
                .isEqualTo("is empty");
        byte[] big = new byte[DocumentCheck.MOST_BYTES + 1];
        assertThat(((Refused) DocumentCheck.of("a.pdf", big)).fault().problem()).contains("more than 16 MiB");
    }

    @Test
    void the_hash_of_abc_is_that_of_FIPS_180_4_from_memory() {
        assertThat(ContentHash.of("abc".getBytes(US_ASCII)).hex())
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assertThatThrownBy(() -> new ContentHash("ABC")).hasMessageContaining("[ABC]");
    }
}
