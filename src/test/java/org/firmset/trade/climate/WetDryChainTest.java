package org.firmset.trade.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WetDryChainTest {
    private static final WetDryChain TEL_AVIV = new WetDryChain(0.250, 0.662);

    @ParameterizedTest(name = "share {0}, persistence {1}")
    @CsvSource({"0.3, 0", "0.3, 0.42", "0.9, 0.9", "0, 0.42", "1, 0.42"})
    void a_share_and_a_persistence_make_a_chain_that_has_them(double share, double persistence) {
        WetDryChain chain = WetDryChain.of(share, persistence);
        assertThat(chain.wetShare()).isCloseTo(share, within(1e-12));
        assertThat(chain.persistence()).isCloseTo(persistence, within(1e-12));
    }

    @Test
    void odds_of_later_days_are_those_of_multiplying_out_by_hand() {
        double two = 0.250 * 0.662 + 0.750 * 0.250;
        double three = two * 0.662 + (1 - two) * 0.250;
        assertThat(TEL_AVIV.wetAfter(0, false)).isCloseTo(0, within(1e-12));
        assertThat(TEL_AVIV.wetAfter(1, false)).isCloseTo(0.250, within(1e-12));
        assertThat(TEL_AVIV.wetAfter(1, true)).isCloseTo(0.662, within(1e-12));
        assertThat(TEL_AVIV.wetAfter(2, false)).isCloseTo(two, within(1e-12));
        assertThat(TEL_AVIV.wetAfter(3, false)).isCloseTo(three, within(1e-12));
        assertThat(TEL_AVIV.wetAfter(60, true)).isCloseTo(TEL_AVIV.wetShare(), within(1e-12));
    }

    @Test
    void dry_days_hang_together_so_a_run_is_likelier_than_by_chance() {
        double dry = 1 - TEL_AVIV.wetShare();
        assertThat(TEL_AVIV.dryInARow(1)).isCloseTo(dry, within(1e-12));
        assertThat(TEL_AVIV.dryInARow(3))
                .isCloseTo(dry * 0.75 * 0.75, within(1e-12))
                .isGreaterThan(dry * dry * dry);
    }

    @Test
    void refuses_odds_beyond_0_and_1_and_a_chain_whose_share_is_open() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WetDryChain(-0.1, 0.5))
                .withMessage("wetAfterDry [-0.1] must be from 0.0 to 1.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WetDryChain(0, 1))
                .withMessageEndingWith("leave the share of wet days open");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WetDryChain.of(0.5, 1))
                .withMessageStartingWith("persistence [1.0]");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WetDryChain.of(1.1, 0))
                .withMessageStartingWith("wetShare [1.1]");
    }
}
