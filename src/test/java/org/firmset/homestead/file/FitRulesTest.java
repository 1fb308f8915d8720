package org.firmset.homestead.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The vehicle takes 50 ft3 and 8 ft, the trailer 100 ft3 and 16 ft; the yard delivers cement up to 4 t. */
class FitRulesTest {
    private static final String NOT_DELIVERED = "/suppliers/0/delivery";
    private static final String REMEDY =
            "Let a supplier deliver it, have it cut or packed smaller, or write down the bay that takes it";

    private static Document tooLong() {
        return Document.sound().with("/materials/0/longest", "\"17 ft\"");
    }

    @Test
    void what_is_too_long_for_every_bay_and_delivered_by_nobody_is_named() {
        assertThat(tooLong().with(NOT_DELIVERED, "null").faults())
                .containsExactly(new Fault(
                        "/materials/0/longest",
                        "5.1816 m",
                        "makes 'Cement' too long for every bay (Pickup, Flatbed), and no supplier that has it delivers",
                        REMEDY));
    }

    @Test
    void what_is_too_big_for_every_bay_and_delivered_by_nobody_is_named() {
        assertThat(Document.sound()
                        .with("/materials/0/volume", "\"101 ft3\"")
                        .with(NOT_DELIVERED, "null")
                        .faults())
                .extracting(Fault::pointer, Fault::remedy)
                .containsExactly(org.assertj.core.api.Assertions.tuple("/materials/0/volume", REMEDY));
    }

    @Test
    void a_supplier_that_delivers_it_mends_it() {
        assertThat(tooLong().faults()).isEmpty();
    }

    @Test
    void a_delivery_that_may_not_weigh_as_much_as_one_pack_is_named_itself() {
        assertThat(tooLong()
                        .with("/suppliers/0/delivery/largestMass", "\"70 lb\"")
                        .faults())
                .extracting(Fault::pointer)
                .containsExactly("/suppliers/0/delivery/largestMass");
    }

    @Test
    void a_bay_on_the_roof_mends_it() {
        String rack = "{\"rating\": \"200 lb\", \"volume\": \"20 ft3\", \"longestPiece\": \"18 ft\"}";
        assertThat(tooLong()
                        .with(NOT_DELIVERED, "null")
                        .with("/vehicles/0/roof", rack)
                        .faults())
                .isEmpty();
    }

    @Test
    void what_lies_on_site_or_no_stage_needs_is_not_asked_for() {
        assertThat(tooLong()
                        .with(NOT_DELIVERED, "null")
                        .with("/stock/0/packs", "20")
                        .faults())
                .isEmpty();
        assertThat(tooLong()
                        .with(NOT_DELIVERED, "null")
                        .with("/stages/1/needs", "[]")
                        .faults())
                .isEqualTo(List.of());
    }
}
