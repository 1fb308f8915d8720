package org.firmset.homestead.store;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.Fault;
import org.firmset.homestead.file.HomesteadRules;
import org.firmset.homestead.file.SeedHomesteads;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;

/** Changes homesteads: what breaks no rule is stored whole and told to whoever plans. Thread-safe. */
@Service
public class Changes {

    /** What came of a change. */
    public sealed interface Change {
        record Stored(Kept kept) implements Change {}

        /** Nothing was stored. */
        record Refused(List<Fault> faults) implements Change {
            public Refused {
                faults = List.copyOf(faults);
            }
        }

        /** Somebody else changed it in between; nothing was stored. */
        record Outdated() implements Change {
            public String message() {
                return "The homestead was changed in another window in the meantime, so nothing was stored. Load the"
                        + " page again and repeat the change.";
            }
        }
    }

    /** A homestead is there, or is different from before. */
    public record HomesteadChanged(UUID homestead) {}

    /**
     * The demo was added, for rooms that have something to show with it.
     *
     * @param weeks by how many weeks its dates lie behind those of its file
     */
    public record DemoAdded(UUID homestead, int weeks) {}

    private final Homesteads homesteads;
    private final ApplicationEventPublisher events;

    Changes(Homesteads homesteads, ApplicationEventPublisher events) {
        this.homesteads = homesteads;
        this.events = events;
    }

    /** Adds a homestead and opens it. */
    public Change add(Homestead homestead) {
        List<Fault> faults = HomesteadRules.faults(homestead);
        return faults.isEmpty() ? told(homesteads.add(homestead)) : new Change.Refused(faults);
    }

    /** Adds the demo and opens it. */
    public Change addDemo(LocalDate today) {
        Change change = add(SeedHomesteads.demo(today));
        if (change instanceof Change.Stored stored) {
            events.publishEvent(new DemoAdded(stored.kept().id(), SeedHomesteads.weeksMoved(today)));
        }
        return change;
    }

    /**
     * Changes a homestead.
     *
     * @param version the version the change was made from
     * @param how makes the changed homestead of the kept one
     */
    public Change change(UUID id, long version, UnaryOperator<Homestead> how) {
        Optional<Kept> kept = homesteads.find(id).filter(k -> k.version() == version);
        if (kept.isEmpty()) {
            return new Change.Outdated();
        }
        Homestead changed = how.apply(kept.get().homestead());
        List<Fault> faults = HomesteadRules.faults(changed);
        if (!faults.isEmpty()) {
            return new Change.Refused(faults);
        }
        try {
            return told(homesteads.replace(id, version, changed));
        } catch (ChangedMeanwhile e) {
            return new Change.Outdated();
        }
    }

    private Change told(Kept kept) {
        events.publishEvent(new HomesteadChanged(kept.id()));
        return new Change.Stored(kept);
    }
}
