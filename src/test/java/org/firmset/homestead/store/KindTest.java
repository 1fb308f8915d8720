package org.firmset.homestead.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.junit.jupiter.api.Test;

class KindTest {
    private static final UUID HOMESTEAD = UUID.fromString("11111111-2222-3333-4444-555555555555");

    /** Databases out there hold such ids: when this fails, mend the code and not the expected value. */
    @Test
    void anIdIsTheSameForGood() {
        assertThat(Kind.STAGE.idOf(HOMESTEAD, "footings")).hasToString("59f49c46-bbae-3e1e-9def-c689037ebe76");
    }

    @Test
    void idsDifferByHomesteadKindAndKey() {
        assertThat(Kind.STAGE.idOf(HOMESTEAD, "footings"))
                .isNotEqualTo(Kind.STAGE.idOf(new UUID(1, 2), "footings"))
                .isNotEqualTo(Kind.TOOL.idOf(HOMESTEAD, "footings"))
                .isNotEqualTo(Kind.STAGE.idOf(HOMESTEAD, "walls"));
    }
}
