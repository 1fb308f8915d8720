package org.firmset.homestead.store;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RichHomesteadTest {
    @Test
    void leavesNothingOutThatARoundTripCouldLoseUnseen() {
        assertThat(RecordTree.gaps(RichHomestead.make())).isEmpty();
    }

    @Test
    void theWalkFindsWhatIsLeftOut() {
        assertThat(RecordTree.gaps(PlainHomestead.make()))
                .contains(
                        "Homestead.power is null",
                        "Homestead.place.latitude is 0",
                        "Homestead.materials[0].dry is false",
                        "Homestead.travel.costPerTrip is CHF 0",
                        "Homestead.travel.costPerDay is the same as Homestead.travel.costPerTrip",
                        "Homestead.pins has fewer than two values, or the same twice: []");
    }
}
