package org.firmset.homestead.store;

import java.io.IOException;
import java.util.Map;
import org.firmset.OnePostgres;
import org.jspecify.annotations.Nullable;

/** A database of its own on a PostgreSQL server. */
class HomesteadsOnPostgresTest extends HomesteadsContract {
    private @Nullable Map<String, Object> environment;

    @Override
    Map<String, Object> environment() throws IOException {
        if (environment == null) {
            environment = OnePostgres.database();
        }
        return environment;
    }
}
