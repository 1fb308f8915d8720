package org.firmset.trade.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PipeRunTest {
    private static final double FLOW = 6.3e-4;
    private static final double VISCOSITY = 1.3e-6;
    private static final PipeRun RUN = new PipeRun(80, 0.026, PipeMaterial.GALVANIZED_STEEL, 6.5);

    @Test
    void friction_follows_the_law_that_was_chosen() {
        assertThat(RUN.frictionHead(FLOW, FrictionLaw.DARCY_WEISBACH, VISCOSITY))
                .isEqualTo(Friction.darcy(FLOW, 80, 0.026, 1.5e-4, VISCOSITY));
        assertThat(RUN.frictionHead(FLOW, FrictionLaw.HAZEN_WILLIAMS, VISCOSITY))
                .isEqualTo(Friction.hazenWilliams(FLOW, 80, 0.026, 120));
    }

    @Test
    void fittings_take_so_many_velocity_heads() {
        assertThat(RUN.fittingHead(FLOW)).isCloseTo(6.5 * Friction.velocityHead(FLOW, 0.026), within(1e-12));
    }

    @Test
    void head_is_friction_and_fittings() {
        assertThat(RUN.head(FLOW, FrictionLaw.HAZEN_WILLIAMS, VISCOSITY))
                .isEqualTo(RUN.frictionHead(FLOW, FrictionLaw.HAZEN_WILLIAMS, VISCOSITY) + RUN.fittingHead(FLOW));
    }

    @ParameterizedTest(name = "{0}: {1} mm, C {2}, {3} 1e-6/K, {4} GPa, plastic {5}")
    @CsvSource(textBlock = """
            PVC,              0.0015, 150,  54,   2.8,  true
            CPVC,             0.0015, 150,  63,   2.9,  true
            POLYETHYLENE,     0.0015, 150, 160,   0.83, true
            PEX,              0.0015, 150, 160,   0.6,  true
            COPPER,           0.0015, 140,  17, 117,    false
            GALVANIZED_STEEL, 0.15,   120,  11.4, 190,  false
            OLD_STEEL,        0.5,    100,  11.4, 190,  false
            """)
    void materials(
            PipeMaterial material, double roughness, double c, double expansion, double modulus, boolean plastic) {
        assertThat(material.roughness() * 1000).isCloseTo(roughness, within(1e-9));
        assertThat(material.hazenWilliams()).isEqualTo(c);
        assertThat(material.expansion() * 1e6).isCloseTo(expansion, within(1e-9));
        assertThat(material.modulus() / 1e9).isCloseTo(modulus, within(1e-9));
        assertThat(material.plastic()).isEqualTo(plastic);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
            ENTRANCE,        0.5
            EXIT,            1
            ELBOW,           1.5
            TEE_THROUGH,     0.9
            TEE_BRANCH,      2
            FULL_BORE_VALVE, 0.15
            GLOBE_VALVE,     10
            CHECK_VALVE,     2
            """)
    void threaded_fittings_as_in_table_8_2_of_munson(Fitting fitting, double k) {
        assertThat(fitting.k()).isEqualTo(k);
    }

    @Test
    void senseless_pipes_are_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PipeRun(-1, 0.02, PipeMaterial.PVC, 0))
                .withMessage("length [-1.0] must be 0 or more");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PipeRun(1, 0, PipeMaterial.PVC, 0))
                .withMessage("bore [0.0] must be over 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PipeRun(1, 0.02, PipeMaterial.PVC, Double.NaN))
                .withMessage("k [NaN] must be 0 or more");
    }
}
