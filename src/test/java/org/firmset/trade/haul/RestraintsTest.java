package org.firmset.trade.haul;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RestraintsTest {
    @ParameterizedTest(name = "{0} mm, {1} g: {2}; 49 CFR 393.110, memory")
    @CsvSource({
        "0,     498952, 1",
        "1524,  498952, 1",
        "1524,  498953, 2",
        "1525,  1000,   2",
        "3048,  900000, 2",
        "3049,  1000,   3",
        "6096,  1000,   3",
        "6097,  1000,   4"
    })
    void ties_go_by_length_and_mass(long longest, long grams, int ties) {
        assertThat(Restraints.ties(longest, grams)).isEqualTo(ties);
    }

    @Test
    @DisplayName("Tie-downs together are rated at least half the mass tied; 49 CFR 393.106, memory")
    void ties_hold_half_the_mass() {
        Restraint restraint = of(new Packs("a", "A", 3, 333, 10, 0, false, false, false, 1), 1, 2);
        assertThat(restraint.tieRatingGrams()).isEqualTo(500);
        assertThat(restraint.leastTies()).as("one for each stack").isEqualTo(2);
        assertThat(restraint.cover()).isFalse();
        assertThat(restraint.flag()).isFalse();
    }

    @Test
    void loose_and_dry_things_are_covered_and_upright_ones_strapped() {
        assertThat(of(new Packs("a", "A", 1, 1, 1, 0, true, false, false, 1), 1).cover())
                .isTrue();
        assertThat(of(new Packs("a", "A", 1, 1, 1, 0, false, false, true, 1), 1).cover())
                .isTrue();
        assertThat(of(new Packs("a", "A", 1, 1, 1, 0, false, true, false, 1), 1).upright())
                .isTrue();
    }

    private static Restraint of(Packs packs, int... stacks) {
        Cargo cargo = new Cargo("bed", packs);
        List<Stowed> stowed = java.util.Arrays.stream(stacks)
                .mapToObj(n -> new Stowed(cargo, n, 0, 100, 50, 0, 0))
                .toList();
        return Restraints.of(stowed).getFirst();
    }
}
