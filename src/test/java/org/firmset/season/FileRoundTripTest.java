package org.firmset.season;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.HomesteadFile;
import org.firmset.homestead.file.Reading;
import org.junit.jupiter.api.Test;

/** Nothing is lost between a homestead and its file. */
class FileRoundTripTest {
    private static final long BASE_SEED = Long.getLong("firmset.seed", 2027);
    private static final List<RandomHomestead> HOMESTEADS = RandomHomestead.many(1000, BASE_SEED);

    @Test
    void what_is_written_reads_back_equal() {
        Property same = new Property("what is written reads back equal", trial -> {
            Homestead homestead = trial.homestead();
            byte[] file = HomesteadFile.write(homestead).getBytes(StandardCharsets.UTF_8);
            assertThat(HomesteadFile.read(file)).isEqualTo(new Reading.Accepted(homestead));
        });
        same.holdsForAll(
                HOMESTEADS,
                HOMESTEADS.stream()
                        .map(h -> new Trial(h.homestead(), h.statusDate()))
                        .toList(),
                BASE_SEED);
    }

    @Test
    void what_is_written_keeps_to_the_published_schema() {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(HomesteadFile.schema());
        for (RandomHomestead given : HOMESTEADS.subList(0, 100)) {
            assertThat(schema.validate(HomesteadFile.write(given.homestead()), InputFormat.JSON))
                    .as("seed %d", given.seed())
                    .isEmpty();
        }
    }
}
