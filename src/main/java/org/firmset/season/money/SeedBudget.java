package org.firmset.season.money;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.firmset.homestead.file.RecordJson;
import org.firmset.homestead.file.Redating;
import org.firmset.spend.Baseline;

/** A budget to begin with. */
public final class SeedBudget {
    private static final String DEMO = "/seed-data/juniper-bench-first-budget.json";

    private SeedBudget() {}

    /**
     * What the demo was to cost before its first receipt.
     *
     * @param weeks by how many weeks its dates lie behind those of its file
     */
    public static Baseline demo(int weeks) {
        try (InputStream in = Objects.requireNonNull(SeedBudget.class.getResourceAsStream(DEMO))) {
            return Redating.later(RecordJson.read(MoneyReport.BUDGET, Baseline.class, in.readAllBytes()), weeks);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
