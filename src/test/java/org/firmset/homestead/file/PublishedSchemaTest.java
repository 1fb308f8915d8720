package org.firmset.homestead.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The schema that people find beside the documentation is the one the program goes by. */
class PublishedSchemaTest {
    private static final Path PUBLISHED = Path.of("docs", "homestead.schema.json");

    @Test
    void the_published_schema_is_the_one_of_the_program() throws IOException {
        if (Boolean.getBoolean("firmset.write")) {
            Files.writeString(PUBLISHED, HomesteadFile.schema());
        }
        assertThat(Files.exists(PUBLISHED) ? Files.readString(PUBLISHED) : "")
                .as("%s, which is refreshed by: mvn test -Dtest=PublishedSchemaTest -Dfirmset.write=true", PUBLISHED)
                .isEqualTo(HomesteadFile.schema());
    }
}
