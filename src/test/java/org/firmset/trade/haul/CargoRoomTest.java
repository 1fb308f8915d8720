package org.firmset.trade.haul;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import org.firmset.measure.Dimension;
import org.firmset.measure.Mass;
import org.firmset.measure.Units;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class CargoRoomTest {
    private static Mass pounds(int pounds) {
        return (Mass) Units.parse(Dimension.MASS, pounds + " lb");
    }

    @Test
    @DisplayName("VH-01: placard of 1,400 lb less five occupants of 150 lb leaves 650 lb (295 kg); wording required by"
            + " 49 CFR 571.110, verified in copies of owner's manuals")
    void placard_arithmetic() {
        Mass room = CargoRoom.of(pounds(1400), pounds(0), Collections.nCopies(5, pounds(150)));
        assertThat(room).isEqualTo(pounds(650));
        assertThat(Units.in(room, "kg", 0)).isEqualTo("295");
    }

    @Test
    @DisplayName("VH-07: gross 7,000 lb, empty 5,100 lb, two people of 180 lb, 100 lb of tools leave 1,440 lb, 18 bags"
            + " of 80 lb; memory: arithmetic on the definition of the rating")
    void bags_for_a_trip() {
        Mass room = CargoRoom.of(pounds(7000), pounds(5100), List.of(pounds(180), pounds(180), pounds(100)));
        assertThat(room).isEqualTo(pounds(1440));
        BigDecimal bags = room.value().divideToIntegralValue(pounds(80).value());
        assertThat(bags).isEqualByComparingTo("18");
        assertThat(Math.ceilDiv(180, bags.intValueExact()))
                .as("trips for 180 bags")
                .isEqualTo(10);
    }

    @Test
    void a_vehicle_that_is_full_already_has_no_room_rather_than_less_than_none() {
        assertThat(CargoRoom.of(pounds(1000), pounds(900), List.of(pounds(101))))
                .isEqualTo(pounds(0));
    }
}
