package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.trade.takeoff.Inputs.work;
import static org.firmset.trade.trace.Results.notes;
import static org.firmset.trade.trace.Results.told;
import static org.firmset.trade.trace.Results.warnings;

import org.firmset.trade.trace.Known;
import org.firmset.trade.trace.Results;
import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Test;

class BarRulesTest {
    private static Worksheet bar(String size, String... more) {
        String[] all = new String[more.length + 2];
        all[0] = "bar";
        all[1] = size;
        System.arraycopy(more, 0, all, 2, more.length);
        return work(BarRules.class, all);
    }

    private static String lap(Worksheet sheet) {
        return told(sheet)
                .lines()
                .filter(l -> l.startsWith("lap: "))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everything_about_a_number_4_bar() {
        assertThat(told(bar("no-4"))).isEqualTo("""
                mass: 0.668 lb/ft; m = pi / 4 d^2 490 lb/ft3; d: diameter, 0.5 in
                section: 0.1963 in2; A = pi / 4 d^2; d: diameter, 0.5 in
                bend: 3 in; D = 6 d; d: diameter, 0.5 in
                hook-leg: 8 in; l = e + D / 2 + d; e: straight end, 6 in; D: bend, 3 in; d: diameter, 0.5 in
                hook-180: 5.998 in; a = e + pi (D + d) / 2 - (D / 2 + d); e: straight end, 2.5 in; D: bend, 3 in
                deduction: 1.251 in; b = 2 (D / 2 + d) - pi / 2 (D / 2 + d / 2); D: bend, 3 in
                lap: 28.48 in; 1.3 ld, at least 12 in; ld = fy / (25 sqrt f'c) d; fy: yield of the steel, 60,000 psi; \
                f'c: concrete, 3,000 psi; ld: development length, 21.91 in
                """);
    }

    @Test
    void laps_say_the_formula_that_was_used() {
        assertThat(lap(bar("no-7", "favourable", "false")))
                .startsWith("lap: 93.46 in; 1.3 ld, at least 12 in; ld = 1.5 fy / (20 sqrt f'c) d; ");
        assertThat(lap(bar("no-4", "lapRule", "masonry")))
                .isEqualTo("lap: 24 in; 0.002 d fs, at least 40 d and 12 in; fs: stress, 24,000 psi");
        assertThat(lap(bar("no-4", "lapRule", "masonry", "highStress", "true")))
                .isEqualTo(
                        "lap: 36 in; 1.5 (0.002 d fs), at most 72 d, at least 40 d and 12 in; fs: stress, 24,000 psi");
        assertThat(lap(bar("no-5", "lapRule", "diameters"))).isEqualTo("lap: 25 in; n d; n: diameters, 40");
    }

    @Test
    void a_lap_by_diameters_is_a_habit_and_the_others_are_seen() {
        assertThat(Results.line(bar("no-5", "lapRule", "diameters"), "lap")
                        .source()
                        .known())
                .isEqualTo(Known.PRACTICE);
        assertThat(Results.line(bar("no-5"), "lap").source().known()).isEqualTo(Known.SEEN);
        assertThat(Results.line(bar("no-5", "lapRule", "masonry"), "lap")
                        .source()
                        .known())
                .isEqualTo(Known.SEEN);
    }

    @Test
    void ties_are_bent_in_a_narrower_circle() {
        assertThat(told(bar("no-4", "tie", "true")))
                .contains("bend: 2 in; D = 4 d;")
                .contains("hook-leg: 4.5 in; l = e + D / 2 + d; e: straight end, 3 in; D: bend, 2 in;");
    }

    @Test
    void stronger_steel_than_60_000_psi_is_warned_of_where_concrete_holds_it() {
        assertThat(warnings(bar("no-4"))).isEmpty();
        assertThat(warnings(bar("no-4", "steelYield", "60100 psi")))
                .singleElement()
                .asString()
                .startsWith("Steel over 60,000 psi (414 MPa)");
        assertThat(warnings(bar("no-4", "steelYield", "80000 psi", "lapRule", "masonry")))
                .isEmpty();
    }

    @Test
    void a_lap_under_12_inches_is_warned_of() {
        assertThat(warnings(bar("no-4", "lapRule", "diameters", "lapDiameters", "24")))
                .isEmpty();
        assertThat(warnings(bar("no-4", "lapRule", "diameters", "lapDiameters", "23.9")))
                .containsExactly("The lap is under 12 in (305 mm), the least that ACI 318 and IBC 2107.2.1 allow.");
    }

    @Test
    void a_thin_tie_has_less_behind_its_hook_than_the_newer_code_wants() {
        assertThat(notes(bar("no-3", "tie", "true")))
                .hasSize(2)
                .first()
                .asString()
                .contains("3 in (76 mm)");
        assertThat(notes(bar("no-4", "tie", "true"))).hasSize(1);
        assertThat(notes(bar("no-3")))
                .containsExactly("The drawing and local code decide; bends, hooks and laps here are for planning.");
    }
}
