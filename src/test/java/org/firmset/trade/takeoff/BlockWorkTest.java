package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.firmset.trade.trace.Known;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BlockWorkTest {
    private static final double INCH = 0.0254;

    @ParameterizedTest(name = "{0}: {1}")
    @DisplayName(
            "sizes of blocks; least shells and webs of ASTM C90-06, 8 in verified in NCMA TEK 14-1B, others memory")
    @CsvSource(delimiter = '|', textBlock = """
            IN_6   | 6 x 8 x 16 in       | 152.4 | 142.875 | 396.875 | 203.2 | 25.4   | 25.4
            IN_8   | 8 x 8 x 16 in       | 203.2 | 193.675 | 396.875 | 203.2 | 31.75  | 25.4
            IN_10  | 10 x 8 x 16 in      | 254   | 244.475 | 396.875 | 203.2 | 34.925 | 28.575
            IN_12  | 12 x 8 x 16 in      | 304.8 | 295.275 | 396.875 | 203.2 | 38.1   | 28.575
            MM_190 | 190 x 190 x 390 mm  | 200   | 190     | 390     | 200   | 31.75  | 25.4
            """)
    void sizes_in_millimetres(
            Block block,
            String words,
            double nominal,
            double width,
            double length,
            double course,
            double shell,
            double web) {
        assertThat(block.words()).isEqualTo(words);
        assertThat(block.nominalWidth() * 1000).isCloseTo(nominal, within(1e-9));
        assertThat(block.width() * 1000).isCloseTo(width, within(1e-9));
        assertThat(block.length() * 1000).isCloseTo(length, within(1e-9));
        assertThat(block.course() * 1000).isCloseTo(course, within(1e-9));
        assertThat(block.shell() * 1000).isCloseTo(shell, within(1e-9));
        assertThat(block.web() * 1000).isCloseTo(web, within(1e-9));
        assertThat(block.source().known()).isEqualTo(block == Block.IN_8 ? Known.SEEN : Known.MEMORY);
    }

    @Test
    void a_course_of_metric_blocks() {
        assertThat(BlockWork.blocksInCourse(Block.MM_190, 8)).isCloseTo(20, within(1e-9));
        assertThat(BlockWork.blocksAround(Block.MM_190, 4, 3)).isCloseTo(33, within(1e-9));
        assertThat(BlockWork.blocksAroundByRule(Block.MM_190, 4, 3)).isCloseTo(35, within(1e-9));
        assertThat(BlockWork.blocksPerArea(Block.MM_190)).isCloseTo(12.5, within(1e-9));
        assertThat(BlockWork.solidAreaPerMetre(Block.MM_190)).isCloseTo(0.19, within(1e-12));
    }

    @Test
    void core_and_end_space_of_an_8_inch_block() {
        double area = BlockWork.coreArea(Block.IN_8, 1.25 * INCH, INCH);
        assertThat(area / INCH / INCH).isCloseTo(5.125 * 12.625, within(1e-9));
        assertThat(BlockWork.coreVolume(Block.IN_8, 1.25 * INCH, INCH)).isCloseTo(area * 8 * INCH, within(1e-12));
        assertThat(BlockWork.endSpace(Block.IN_8, 1.25 * INCH) / INCH / INCH / INCH)
                .isCloseTo(5.125 * 0.375 * 8, within(1e-9));
    }

    @Test
    void mass_of_a_square_metre_is_blocks_and_their_share_of_grout() {
        // 12.5 blocks of (0.19 x 0.39 - 0.1265 x 0.3138) x 0.19 m3, and 0.1265 x 0.3238 x 0.2 m3 of grout each
        double hollow = 12.5 * (0.19 * 0.39 - 0.1265 * 0.3138) * 0.19 * 2000;
        double grout = 12.5 * 0.1265 * 0.3238 * 0.2 * 2200;
        assertThat(BlockWork.massPerArea(Block.MM_190, 2000, 2200, 0)).isCloseTo(hollow, within(1e-6));
        assertThat(BlockWork.massPerArea(Block.MM_190, 2000, 2200, 0.25)).isCloseTo(hollow + grout / 4, within(1e-6));
        assertThat(BlockWork.massPerArea(Block.MM_190, 2000, 2200, 1)).isCloseTo(hollow + grout, within(1e-6));
    }

    @ParameterizedTest(name = "cells {0} in, beams {1} in: {2}")
    @CsvSource(textBlock = """
            8,  Infinity, 1
            32, Infinity, 0.25
            32, 8,        1
            32, 16,       0.625
            """)
    void share_filled(double cells, double beams, double share) {
        assertThat(BlockWork.filledShare(Block.IN_8, cells * INCH, beams * INCH))
                .isCloseTo(share, within(1e-9));
    }

    @Test
    void beams_in_every_course_make_the_wall_solid() {
        assertThat(BlockWork.massWithBeams(56, 84, 8, 8)).isEqualTo(84);
        assertThat(BlockWork.massWithBeams(56, 84, 8, 16)).isEqualTo(70);
        assertThat(BlockWork.massWithBeams(84, 84, 8, 16)).isEqualTo(84);
        assertThat(BlockWork.massWithBeams(0, 84, 8, 16)).isEqualTo(42);
    }

    @Nested
    class Refusals {
        @ParameterizedTest(name = "shell {0}, web {1}")
        @CsvSource(textBlock = """
                0,    0.02
                -0.1, 0.02
                NaN,  0.02
                0.03, 0
                0.03, NaN
                0.095, 0.02
                0.03, 0.13
                """)
        void shells_and_webs_that_leave_no_core(double shell, double web) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> BlockWork.coreArea(Block.MM_190, shell, web))
                    .withMessage(
                            "shell [" + shell + "] and web [" + web + "] must leave a core in a block of 0.19 x 0.39");
        }

        @ParameterizedTest
        @ValueSource(doubles = {0, -1, 0.095, Double.NaN})
        void shells_that_leave_no_end_space(double shell) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> BlockWork.endSpace(Block.MM_190, shell))
                    .withMessage("shell [" + shell + "] must leave a core in a block of width [0.19]");
        }

        @Test
        void shells_just_thin_enough_pass() {
            assertThat(BlockWork.coreArea(Block.MM_190, 0.0949, 0.1299)).isPositive();
            assertThat(BlockWork.endSpace(Block.MM_190, 0.0949)).isPositive();
        }

        @ParameterizedTest
        @ValueSource(doubles = {0, -1, Double.NaN})
        void lengths_and_densities_that_are_not_over_0(double bad) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> BlockWork.blocksInCourse(Block.IN_8, bad))
                    .withMessage("length [" + bad + "] must be over 0");
            assertThatIllegalArgumentException().isThrownBy(() -> BlockWork.blocksAround(Block.IN_8, bad, 3));
            assertThatIllegalArgumentException().isThrownBy(() -> BlockWork.blocksAround(Block.IN_8, 3, bad));
            assertThatIllegalArgumentException().isThrownBy(() -> BlockWork.blocksAroundByRule(Block.IN_8, bad, 3));
            assertThatIllegalArgumentException().isThrownBy(() -> BlockWork.blocksAroundByRule(Block.IN_8, 3, bad));
            assertThatIllegalArgumentException().isThrownBy(() -> BlockWork.massPerArea(Block.IN_8, bad, 2000, 1));
            assertThatIllegalArgumentException().isThrownBy(() -> BlockWork.massPerArea(Block.IN_8, 2000, bad, 1));
        }

        @ParameterizedTest
        @ValueSource(doubles = {-0.01, 1.01, Double.NaN})
        void shares_that_are_none(double filled) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> BlockWork.massPerArea(Block.IN_8, 2000, 2000, filled))
                    .withMessage("filled [" + filled + "] must be from 0 to 1");
        }

        @ParameterizedTest(name = "cells {0}, beams {1}")
        @CsvSource(textBlock = """
                0.199, 1
                NaN,   1
                0.2,   0.199
                0.2,   NaN
                """)
        void distances_under_a_cell_or_a_course(double cells, double beams) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> BlockWork.filledShare(Block.MM_190, cells, beams))
                    .withMessage("cellSpacing [" + cells + "] must be at least [0.2] and beamSpacing [" + beams
                            + "] at least [0.2]");
        }

        @ParameterizedTest(name = "base {0}, solid {1}, course {2}, beams {3}")
        @CsvSource(textBlock = """
                -1,  84,  8,   24
                NaN, 84,  8,   24
                85,  84,  8,   24
                56,  NaN, 8,   24
                56,  84,  0,   24
                56,  84,  NaN, 24
                56,  84,  8,   7
                56,  84,  8,   NaN
                """)
        void masses_and_distances_that_do_not_go_together(double base, double solid, double course, double beams) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> BlockWork.massWithBeams(base, solid, course, beams))
                    .withMessageContaining("do not go together");
        }
    }
}
