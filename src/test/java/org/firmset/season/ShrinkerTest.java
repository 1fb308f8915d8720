package org.firmset.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Wait;
import org.firmset.homestead.file.HomesteadFile;
import org.firmset.homestead.file.HomesteadRules;
import org.firmset.homestead.file.Reading;
import org.junit.jupiter.api.Test;

/** Shown on properties that are broken on purpose: what is told is small, sound, and fails still. */
class ShrinkerTest {
    private static final List<RandomHomestead> HOMESTEADS = RandomHomestead.many(60, 7);

    private static RandomHomestead first(java.util.function.Predicate<Homestead> wanted) {
        return HOMESTEADS.stream()
                .filter(h -> wanted.test(h.homestead()))
                .findFirst()
                .orElseThrow();
    }

    private static boolean hasCure(Homestead homestead) {
        return homestead.waits().stream().map(Wait::cure).anyMatch(c -> c != null);
    }

    @Test
    void only_what_makes_it_fail_is_left() {
        Homestead great = first(
                        h -> hasCure(h) && h.people().size() > 1 && h.stages().size() > 8)
                .homestead();
        Homestead small = Shrinker.shrink(
                great,
                h -> HomesteadRules.faults(h).isEmpty()
                        && hasCure(h)
                        && h.people().size() > 1);
        assertThat(small.stages()).hasSize(2);
        assertThat(small.waits()).hasSize(1);
        assertThat(small.people()).hasSize(2);
        assertThat(small.subprojects()).hasSizeLessThanOrEqualTo(2);
        assertThat(small.place().climate()).hasSize(12);
        assertThat(List.of(small.materials(), small.suppliers(), small.stock(), small.pins(), small.trailers()))
                .containsOnly(List.of());
        assertThat(small.power()).isNull();
        assertThat(small.spendingLimit()).isNull();
        assertThat(small.stages()).allSatisfy(s -> {
            assertThat(s.labour().quarters()).isEqualTo(1);
            assertThat(s.needs()).isEmpty();
            assertThat(s.progress()).isNull();
            assertThat(s.note()).isNull();
        });
    }

    @Test
    void what_still_fails_is_never_given_up_and_is_sound() {
        for (RandomHomestead given : HOMESTEADS.subList(0, 4)) {
            int stages = Math.min(2, given.homestead().stages().size());
            Homestead small = Shrinker.shrink(
                    given.homestead(),
                    h -> HomesteadRules.faults(h).isEmpty() && h.stages().size() >= stages);
            assertThat(small.stages()).hasSize(stages);
            assertThat(HomesteadRules.faults(small)).isEmpty();
        }
    }

    @Test
    void a_failing_property_tells_its_seed_and_a_homestead_file_that_can_be_read() {
        RandomHomestead given = first(h -> !h.waits().isEmpty());
        Property broken = new Property("no homestead has waits", trial -> {
            assertThat(trial.homestead().waits()).isEmpty();
        });
        assertThatThrownBy(() -> broken.holdsFor(new Trial(given.homestead(), given.statusDate()), "seed 4711"))
                .isInstanceOf(AssertionError.class)
                .hasMessageContainingAll(
                        "no homestead has waits",
                        "seed 4711",
                        given.statusDate().toString())
                .satisfies(e -> {
                    String message = String.valueOf(e.getMessage());
                    String file = message.substring(message.indexOf("\n{") + 1);
                    assertThat(HomesteadFile.read(file.getBytes(java.nio.charset.StandardCharsets.UTF_8)))
                            .isInstanceOfSatisfying(
                                    Reading.Accepted.class,
                                    r -> assertThat(r.homestead().waits()).hasSize(1));
                });
    }

    @Test
    void a_property_that_throws_is_told_too() {
        RandomHomestead given = HOMESTEADS.getFirst();
        Property broken = new Property("it never breaks", trial -> {
            throw new IllegalStateException("broken");
        });
        assertThatThrownBy(() -> broken.holdsFor(new Trial(given.homestead(), given.statusDate()), "seed 1"))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("broken");
    }

    @Test
    void a_property_that_holds_says_nothing() {
        RandomHomestead given = HOMESTEADS.getFirst();
        Property holds = new Property(
                "there is a name", trial -> assertThat(trial.homestead().name()).isNotBlank());
        assertThatCode(() -> holds.holdsFor(new Trial(given.homestead(), given.statusDate()), "seed 1"))
                .doesNotThrowAnyException();
    }
}
