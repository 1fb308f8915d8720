package org.firmset.season.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.html.Section;
import java.util.List;
import org.firmset.homestead.Cautions;
import org.junit.jupiter.api.Test;

class WaterSectionTest {
    @Test
    void says_each_sentence_and_the_caution_last() {
        Section section = WaterSection.of(List.of("Its work takes 160 L.", "Bring 3 cans."));
        assertThat(section.getElement().getTextRecursively())
                .startsWith("Water")
                .contains("Its work takes 160 L.", "Bring 3 cans.")
                .endsWith(Cautions.WATER);
    }
}
