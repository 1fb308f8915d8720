package org.firmset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoadsCommandTest {
    private static final String DEMO = "seed-data/juniper-bench.json";
    private static final String SMALL = "seed-data/two-weekends.json";

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int loads(String file, String... more) {
        List<String> words = new ArrayList<>(List.of("loads", file, "--date", "2027-03-01", "--proof", "0"));
        words.addAll(List.of(more));
        return new Commands(
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8))
                .run(words);
    }

    private String printed() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String complained() {
        return err.toString(StandardCharsets.UTF_8);
    }

    @Test
    void a_trip_is_printed_with_places_limits_shopping_and_cautions() {
        assertThat(loads(DEMO, "--trip", "1")).isZero();
        assertThat(printed())
                .startsWith("TRIP 1  Sat 17 Apr to Sun 18 Apr 2027\n1 run of your own.\n")
                .contains(
                        "With you on Sat 17 Apr: Pickup with Flat trailer",
                        " of the loaded trailer; 10 to 15 % is usual.",
                        "Rear axle",
                        "binds",
                        "What lies where, in the order it comes off",
                        "Buy at Building yard in town: ",
                        "Delivered for Sat 17 Apr: Masonry and rock supplier",
                        "order by Sat 10 Apr 2027",
                        "On site before and after",
                        "Dry room: ",
                        "Weigh the first loads axle by axle: these are sums; sticker, maker, scale and the law come first.",
                        "General reminders only: local code");
    }

    @Test
    void a_trip_is_named_by_its_date_and_printed_in_other_units() {
        assertThat(loads(DEMO, "--trip", "2027-04-17", "--units", "metric")).isZero();
        // 3,900 lb of the file, by hand: x 0.45359237
        assertThat(printed()).contains("TRIP 1 ", "1,769 kg").doesNotContain("3,900 lb");
    }

    @Test
    void more_than_one_run_says_whether_fewer_would_do(@TempDir Path folder) throws IOException {
        // a van that carries 400 kg less has to go twice
        Path heavy = folder.resolve("heavy.json");
        Files.writeString(
                heavy,
                Files.readString(Path.of(SMALL))
                        .replace("\"mostExtraRuns\": 0", "\"mostExtraRuns\": 1")
                        .replace("\"extraRunTime\": \"2 h\"", "\"extraRunTime\": \"0.5 h\"")
                        .replace("\"standingKit\": \"40 kg\"", "\"standingKit\": \"440 kg\""));
        assertThat(loads(heavy.toString(), "--trip", "1")).isZero();
        assertThat(printed()).contains("2 runs; ", "Extra run to the yard and back");
    }

    @Test
    void a_vehicle_without_known_axles_says_how_to_weigh() {
        assertThat(loads(SMALL, "--trip", "1")).isZero();
        assertThat(printed())
                .contains("! Not known: the axles of Van.", "each axle by itself")
                .doesNotContain("Rear axle");
    }

    @Test
    void a_change_on_the_day_says_what_it_means() {
        // by hand in docs/two-weekends.md: 9 bags wanted, 5 to be had
        assertThat(loads(SMALL, "--trip", "1", "--had", "post-concrete-25=5")).isZero();
        assertThat(printed())
                .startsWith("Not to be had: 4 bags of Post concrete, 25 kg.")
                .contains("must not start: 5 of 9 bags")
                .doesNotContain("TRIP");
    }

    @Test
    void people_and_the_trailer_are_changes_as_well() {
        // by hand: 900 - 100 = 800 kg: the ninth bag of 25 kg and the posts stay
        assertThat(loads(SMALL, "--trip", "1", "--more-people", "100")).isZero();
        assertThat(printed()).contains("Stays behind: ", "1 bag of Post concrete, 25 kg", "4 posts of Post 9 x 9 cm");
        out.reset();
        assertThat(loads(DEMO, "--trip", "1", "--without-trailer", "--had=concrete-80=1"))
                .isZero();
        assertThat(printed())
                .containsPattern("Not to be had: \\d+ bags? of Concrete mix, 80 lb\\.")
                .contains("Goes in now, Pickup: ")
                .containsPattern("No run of this vehicle can carry \\d+ bars of Rebar");
    }

    @Nested
    class Refusals {
        @ParameterizedTest
        @CsvSource(textBlock = """
                --trip, 99, "'99' is no trip of the plan; it makes 1 (2027-05-08)"
                --had, gravel-25, write the key of a material and packs
                --had, gravel-25=-3, write the key of a material and packs
                --had, nothing=3, "'nothing' is no material; there are "
                --more-people, -20 kg, must not be under zero
                --more-people, three, is not a number with its unit
                --sideways, 1, is no option here
                """, quoteCharacter = '"')
        void what_is_not_understood_is_said_with_its_value(String option, String value, String message) {
            String[] words = option.equals("--trip")
                    ? new String[] {option, value}
                    : new String[] {"--trip", "1", option, value};
            assertThat(loads(SMALL, words)).isEqualTo(Commands.NOT_UNDERSTOOD);
            assertThat(complained()).contains(message);
        }

        @Test
        void a_trip_has_to_be_named() {
            assertThat(loads(SMALL)).isEqualTo(Commands.NOT_UNDERSTOOD);
            assertThat(complained()).contains("name the trip: --trip 1");
        }
    }
}
