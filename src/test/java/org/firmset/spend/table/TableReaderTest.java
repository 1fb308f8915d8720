package org.firmset.spend.table;

import static java.nio.charset.StandardCharsets.UTF_16BE;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.List;
import org.firmset.homestead.file.Fault;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables of any encoding and separator are read, wrong ones refused. */
class TableReaderTest {
    private static final String TABLE = "Datum;Gesch\u00e4ft;Betrag\r\n17.10.2026;M\u00fcller;12,50\r\n";

    @Test
    void all_encodings_give_the_same_cells() {
        List<byte[]> files = List.of(
                TABLE.getBytes(UTF_8),
                ("\ufeff" + TABLE).getBytes(UTF_8),
                ("\ufeff" + TABLE).getBytes(UTF_16LE),
                ("\ufeff" + TABLE).getBytes(UTF_16BE),
                TABLE.getBytes(Charset.forName("windows-1252")));
        assertThat(files).allSatisfy(file -> {
            SpendTable table = TableReader.read(file).table().orElseThrow();
            assertThat(table.headings()).containsExactly("Datum", "Gesch\u00e4ft", "Betrag");
            assertThat(table.rows())
                    .containsExactly(new SpendTable.Row(2, List.of("17.10.2026", "M\u00fcller", "12,50")));
        });
    }

    @Test
    void the_encoding_is_told() {
        assertThat(TableReader.read(TABLE.getBytes(Charset.forName("windows-1252")))
                        .table()
                        .orElseThrow()
                        .charset())
                .isEqualTo("windows-1252");
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void separators_are_found(String separator) {
        SpendTable table = table("a%sb%sc\n1%s\"x,;\t\n\"\"y\"\"\"%s2\n".replace("%s", separator));
        assertThat(table.separator()).isEqualTo(separator.charAt(0));
        assertThat(table.rows().getFirst().cells()).containsExactly("1", "x,;\t\n\"y\"", "2");
    }

    @Test
    void decimal_commas_and_a_comma_in_a_heading_do_not_hide_the_semicolons() {
        assertThat(table("Date;Amount, USD;Shop\n2026-10-17;12,50;a\n2026-10-18;9;b, c\n")
                        .separator())
                .isEqualTo(';');
    }

    @Test
    void lines_are_counted_over_blank_rows_and_cells_with_breaks() {
        SpendTable table = table("a,b\r\n\r\n1,\"two\r\nlines\"\r\n,\r\n3,4\r\n5,6");
        assertThat(table.rows()).extracting(SpendTable.Row::line).containsExactly(3L, 6L, 7L);
    }

    @Test
    void the_fingerprint_depends_on_the_headings_alone() {
        String one = table("Date,Amount (USD)\n1,2\n").fingerprint();
        assertThat(table("date;amount\n3;4\n5;6\n").fingerprint()).isEqualTo(one);
        assertThat(table("amount,date\n1,2\n").fingerprint()).isNotEqualTo(one);
    }

    @Nested
    class Refused {
        @Test
        void a_file_of_200_MB_before_it_is_read(@TempDir Path folder) throws IOException {
            Path file = folder.resolve("big.csv");
            try (RandomAccessFile big = new RandomAccessFile(file.toFile(), "rw")) {
                big.setLength(200L << 20);
            }
            long before =
                    Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
            TableReader.Read read = TableReader.read(file);
            long after =
                    Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
            assertThat(line(read))
                    .isEqualTo("The file is over 16 MiB. Hand in the receipts year by year, as text only.");
            assertThat(after - before).isLessThan(10L << 20);
        }

        @Test
        void an_upload_that_never_ends_after_the_limit() throws IOException {
            java.io.InputStream endless = new java.io.InputStream() {
                @Override
                public int read() {
                    return 'a';
                }

                @Override
                public int read(byte[] into, int from, int length) {
                    java.util.Arrays.fill(into, from, from + length, (byte) 'a');
                    return length;
                }
            };
            assertThat(line(TableReader.read(endless))).contains("is over 16 MiB");
        }

        @Test
        void lines_and_numbers_of_lines_over_the_limit() {
            String longLine = "a,b\n1," + "x".repeat(TableReader.LONGEST_LINE) + "\n";
            assertThat(line(read(longLine))).startsWith("line 2 [10002 characters] is longer than 10000");
            String many = "a,b\n" + "1,2\n".repeat(TableReader.MOST_LINES);
            assertThat(line(read(many))).contains("has 100001 lines, more than 100000");
        }

        @Test
        void empty_files_single_columns_and_no_text() {
            assertThat(line(read(""))).contains("is empty");
            assertThat(line(read("Date\n2026-10-17\n"))).contains("has only one column");
            assertThat(line(TableReader.read("a,b\n1,2".getBytes(UTF_16LE)))).contains("is no text");
            assertThat(line(TableReader.read(new byte[] {'a', ',', (byte) 0x81})))
                    .contains("is no text, or in an encoding that is not known. Save the table as CSV in UTF-8.");
        }

        @Test
        void rows_of_another_width_with_their_lines() {
            assertThat(line(read("a,b\n1,2\n1,2,3\n")))
                    .startsWith("line 3 [3 cells] are not as many as the 2 headings");
        }

        @Test
        void quotes_that_are_not_closed() {
            assertThat(line(read("a,b\n1,2\n3,\"never\n4,5\n")))
                    .startsWith("after line 2 stands a quote that is not closed");
        }

        @Test
        void the_same_heading_twice() {
            assertThat(line(read("a,a\n1,2\n"))).contains("[a] is the heading of two columns");
        }

        private TableReader.Read read(String text) {
            return TableReader.read(text.getBytes(UTF_8));
        }

        private String line(TableReader.Read read) {
            assertThat(read.table()).isEmpty();
            return read.faults().stream().map(Fault::line).findFirst().orElse("");
        }
    }

    private static SpendTable table(String text) {
        TableReader.Read read = TableReader.read(text.getBytes(UTF_8));
        assertThat(read.faults()).isEmpty();
        return read.table().orElseThrow();
    }
}
