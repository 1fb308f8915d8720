package org.firmset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DayCommandTest {
    private static final String DEMO = "seed-data/juniper-bench.json";

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int day(String... more) {
        List<String> words = new ArrayList<>(List.of("day", DEMO, "--date", "2027-06-12"));
        words.addAll(List.of(more));
        return new Commands(
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8))
                .run(words);
    }

    private String printed() {
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void a_date_is_printed_with_light_weather_odds_battery_and_cautions() {
        assertThat(day()).isZero();
        assertThat(printed())
                .startsWith("DAY  Sat 12 Jun 2027\n")
                // the almanac gives 45° north about 15 h 35 min in mid June
                .containsPattern("Sunrise to sunset +05:1\\d to 20:4\\d \\(15 h 3\\d min\\)")
                .containsPattern("Work may begin +07:00")
                .contains(
                        "Odds of a dry day",
                        "Odds of frost",
                        "Pour the cap",
                        "The battery lasts: ",
                        "The battery by the hour",
                        "23 to 24",
                        "never charge frozen",
                        "General reminders only: local code");
    }

    @Test
    void work_that_the_battery_does_not_last_for_is_split() {
        assertThat(day("--work", "water-wall-fill=9.75", "--work=water-wall=4", "--people", "2"))
                .isZero();
        assertThat(printed())
                .contains("Shared by 2 people", "Work, the thirstiest first")
                .containsPattern("Fill the cores of the wall +07:00 +11:5\\d +9.75 h")
                .containsPattern("the battery allows \\d+ bags of Core fill grout, 80 lb today and \\d+ bags");
    }

    @Test
    void what_has_to_be_done_in_one_go_is_not_split_but_shown() {
        assertThat(day("--work", "water-cap-pour=30", "--people", "3")).isZero();
        assertThat(printed())
                .containsPattern("Of 'Pour the cap' the battery allows .* today and .* tomorrow.*")
                .contains("It has to be done in one go, so this only shows what is missing.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', textBlock = """
            --work | roofing=4 | 'roofing' is no stage; there are
            --work | water-wall | is not understood; write the key of a stage and hours of labour
            --work | water-wall=0 | is not understood; write the key of a stage and hours of labour
            --work | water-wall=4 mi | is not a time; write hours such as
            --people | 0 | write a whole number from 1 to 50
            --generator | soon | write a whole number from 0 to 1440
            --json | x | '--json' is no option here
            """)
    void what_is_not_understood_is_told(String option, String value, String told) {
        assertThat(day(option, value)).isEqualTo(Commands.NOT_UNDERSTOOD);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains(told);
    }
}
