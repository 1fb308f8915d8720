package org.firmset.trade.haul;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** The example that docs/loads.md works out by hand, in pounds and inches. */
class WorkedExampleTest {
    private static final double GRAMS = 453.59237;
    private static final double MILLIMETRES = 25.4;

    private static long lb(double pounds) {
        return Math.round(pounds * GRAMS);
    }

    private static long in(double inches) {
        return Math.round(inches * MILLIMETRES);
    }

    private static Outfit pickup() {
        return new Outfit(
                new HaulVehicle(
                        "Pickup",
                        lb(7000),
                        lb(5100),
                        new Bay("bed", "Bed", 2_124_000, in(120)),
                        new VehicleAxles(
                                in(145), lb(3750), lb(3900), lb(3000), in(92), in(78), in(65), in(100), in(193)),
                        lb(12_000),
                        lb(5000),
                        lb(500),
                        null),
                new HaulTrailer(
                        "Trailer",
                        lb(3500),
                        lb(1250),
                        12,
                        new Bay("deck", "Deck", 6_116_000, in(240)),
                        new TrailerDeck(in(136), in(48), in(144), lb(3500))),
                lb(360),
                lb(140));
    }

    /** Bags of 80 lb: twelve in the bed with their middle 53 in behind its front edge, 28 on the deck at 71 in. */
    private static LoadSheet sheet() {
        return LoadSheet.of(
                pickup(), List.of(new Placed("bed", 12 * lb(80), in(53)), new Placed("deck", 28 * lb(80), in(71))));
    }

    private static double on(LimitKind kind) {
        return sheet().limit(kind).orElseThrow().onItGrams() / GRAMS;
    }

    private static Tongue tongue() {
        return Objects.requireNonNull(sheet().tongue());
    }

    @Test
    void the_tongue() {
        assertThat(tongue().onHitchGrams() / GRAMS).isCloseTo(430.0, within(0.5));
        assertThat(tongue().share()).isCloseTo(0.123, within(0.0005));
    }

    @Test
    void the_rear_axle() {
        // 2100 + 360 x 65/145 + 140 x 100/145 + 960 x 145/145 + 430 x 193/145
        assertThat(on(LimitKind.REAR_AXLE)).isCloseTo(3890.3, within(0.5));
    }

    @Test
    void the_front_axle() {
        // 3000 + 360 x 80/145 + 140 x 45/145 + 960 x 0/145 - 430 x 48/145
        assertThat(on(LimitKind.FRONT_AXLE)).isCloseTo(3099.7, within(0.5));
        assertThat(sheet().warnings()).isEmpty();
    }

    @Test
    void the_rest() {
        assertThat(on(LimitKind.PAYLOAD)).isCloseTo(1890.0, within(0.5));
        assertThat(on(LimitKind.TRAILER_RATING)).isCloseTo(3490, within(0.5));
        assertThat(on(LimitKind.TRAILER_AXLE)).isCloseTo(3060.0, within(0.5));
        assertThat(on(LimitKind.COMBINATION)).isCloseTo(10_050, within(0.5));
        assertThat(sheet().binding().kind()).isEqualTo(LimitKind.REAR_AXLE);
        assertThat(sheet().binding().leftGrams() / GRAMS).isCloseTo(9.7, within(0.5));
    }
}
