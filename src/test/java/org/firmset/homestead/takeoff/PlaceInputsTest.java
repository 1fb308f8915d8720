package org.firmset.homestead.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.measure.UnitSystem;
import org.firmset.trade.trace.Kind;
import org.junit.jupiter.api.Test;

class PlaceInputsTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final Homestead DEMO = SeedHomesteads.demo(TODAY);
    private static final Kind<?> CURE = Catalogue.find("cure").orElseThrow();

    @Test
    void a_cure_goes_by_the_months_of_the_place() {
        Map<String, String> texts = PlaceInputs.of(DEMO, CURE);
        assertThat(texts).containsOnlyKeys("meanHigh", "meanLow");
        assertThat(texts.get("meanHigh")).startsWith("2.8 5.2 9.1").endsWith("degC");
        Map<String, String> all = new HashMap<>(texts);
        all.put("poured", "2027-05-15");
        assertThat(Inputs.work(CURE, all)).isInstanceOf(Worked.Done.class);
    }

    @Test
    void what_asks_for_no_months_gets_none() {
        assertThat(PlaceInputs.of(DEMO, Catalogue.find("slab").orElseThrow())).isEmpty();
    }

    @Test
    void a_place_without_months_gives_none() {
        assertThat(PlaceInputs.of(SeedHomesteads.empty("Bare", UnitSystem.US, TODAY), CURE))
                .isEmpty();
    }
}
