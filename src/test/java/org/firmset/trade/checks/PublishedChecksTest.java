package org.firmset.trade.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What the trade's rooms compute stands beside published values, each under its source. */
class PublishedChecksTest {
    private static final Path PAGE = Path.of("docs", "checks.md");

    @TestFactory
    Stream<DynamicTest> published_values() {
        return AllChecks.rows().stream()
                .flatMap(row -> row.checks().stream())
                .map(check -> dynamicTest(check.title(), () -> hold(check)));
    }

    private static void hold(Check check) {
        double computed = check.computed().getAsDouble();
        String what = "%s: expected %s, computed %s"
                .formatted(check.row().id(), check.plain(check.expected()), check.plain(computed));
        if (check.row().fromMemory()) {
            assumeTrue(check.holds(computed), what + "; the expected value is quoted from memory, so this only warns");
        }
        assertThat(check.holds(computed)).as(what).isTrue();
    }

    @Test
    void every_row_has_an_id_of_its_own_and_at_least_one_value() {
        List<String> ids = AllChecks.rows().stream().map(Row::id).toList();
        assertThat(ids).doesNotHaveDuplicates();
        assertThat(AllChecks.rows()).noneMatch(row -> row.checks().isEmpty());
    }

    @Test
    void at_least_eighty_rows_are_checked() {
        assertThat(AllChecks.rows()).hasSizeGreaterThanOrEqualTo(80);
    }

    @Test
    void the_page_says_what_is_computed_now() throws IOException {
        String page = ChecksPage.write(AllChecks.rows());
        if (Boolean.getBoolean("firmset.write")) {
            Files.writeString(PAGE, page);
        }
        assertThat(Files.exists(PAGE) ? Files.readString(PAGE) : "")
                .as("%s, which is refreshed by: mvn test -Dtest=PublishedChecksTest -Dfirmset.write=true", PAGE)
                .isEqualTo(page);
    }
}
