package org.firmset.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.HomesteadFile;
import org.firmset.homestead.file.HomesteadRules;

/**
 * Something that must hold for every homestead. When it does not, the homestead is made as small as it gets while the
 * property still fails, and is told as a homestead file.
 *
 * @param name what must hold, in words
 * @param check throws when it does not hold
 */
record Property(String name, Consumer<Trial> check) {
    /** @param seed says how to make the homestead of the trial again */
    void holdsFor(Trial trial, String seed) {
        Optional<Throwable> complaint = complaint(trial);
        if (complaint.isPresent()) {
            LocalDate date = trial.statusDate();
            Homestead small = Shrinker.shrink(trial.homestead(), h -> fails(h, date));
            throw new AssertionError(
                    "%s: does not hold for the homestead of %s, planned on %s.%n%s%nThe smallest found:%n%s"
                            .formatted(
                                    name,
                                    seed,
                                    date,
                                    complaint(new Trial(small, date))
                                            .map(Throwable::toString)
                                            .orElse(""),
                                    HomesteadFile.write(small)),
                    complaint.get());
        }
    }

    private boolean fails(Homestead homestead, LocalDate date) {
        return HomesteadRules.faults(homestead).isEmpty()
                && complaint(new Trial(homestead, date)).isPresent();
    }

    private Optional<Throwable> complaint(Trial trial) {
        try {
            check.accept(trial);
            return Optional.empty();
        } catch (AssertionError | RuntimeException e) {
            return Optional.of(e);
        }
    }

    void holdsForAll(List<RandomHomestead> homesteads, List<Trial> trials, long baseSeed) {
        for (int i = 0; i < trials.size(); i++) {
            holdsFor(
                    trials.get(i),
                    "seed " + homesteads.get(i).seed() + " (-Dfirmset.seed=" + baseSeed + ", number " + i + ")");
        }
    }
}
