package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.trade.takeoff.Inputs.refused;
import static org.firmset.trade.takeoff.Inputs.work;
import static org.firmset.trade.trace.Results.told;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class BondBeamTest {
    @Test
    void two_beams_over_cells_filled_in_part() {
        // 2 x (5.125 x 4.5 x 480 + 30 x 64.70 x 3.5 / 4 - 2 x 0.1963 x 480) in3
        assertThat(told(work(BondBeam.class, "length", "40 ft", "beams", "2", "filledBelowPercent", "25")))
                .startsWith("""
                volume: 14.56 ft3; V = n (c u L + m a (h - u) p - k A L); n: beams, 2; c: between the shells, 5.125 in; \
                u: trough, 4.5 in; L: length, 40 ft; m: blocks, 30; a: cores of a block from above, 64.7 in2; h: course, \
                8 in; p: cells that take grout below the trough, 25 %; k: bars, 2; A: section of #4, 0.1963 in2
                bar-length: 160 ft; S = n k L; n: beams, 2; k: bars, 2; L: length, 40 ft
                bar-mass: 106.9 lb; M = S g; S: bars without laps, 160 ft; g: mass of its length, 0.668 lb/ft
                volume-with-waste: 16.02 ft3; G = V (1 + w); V: net volume, 14.56 ft3; w: waste, 10 %
                bags: 27 bags (26.69);""");
    }

    @Nested
    class Refusals {
        @Test
        void a_trough_as_deep_as_the_course() {
            assertThat(refused(BondBeam.class, "length", "4 m", "block", "mm-190", "trough", "200 mm"))
                    .hasMessage(
                            "trough [0.2 m] is as deep as the course. Enter less than 0.2 m, the depth that is cut out of"
                                    + " the webs.");
            assertThat(work(BondBeam.class, "length", "4 m", "block", "mm-190", "trough", "199 mm")
                            .line("bags"))
                    .isPresent();
        }

        @Test
        void bars_that_fill_the_trough() {
            String[] given = {
                "length",
                "4 m",
                "block",
                "in-6",
                "trough",
                "50 mm",
                "filledBelowPercent",
                "0",
                "bar",
                "no-11",
                "bars",
                "8"
            };
            assertThat(refused(BondBeam.class, given))
                    .hasMessage("bars [8] fill the whole trough. Enter fewer or thinner bars.");
            given[11] = "4";
            assertThat(work(BondBeam.class, given).line("bags")).isPresent();
        }
    }
}
