package org.firmset.homestead.store;

/** A change was refused because the homestead is no longer what the change was made from. Nothing was saved. */
public final class ChangedMeanwhile extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private ChangedMeanwhile(String message) {
        super(message);
    }

    static ChangedMeanwhile since(long expectedVersion, HomesteadRow now) {
        return new ChangedMeanwhile(
                ("version [%d] of homestead [%s] is not the latest [%d]: it was changed meanwhile at"
                                + " %s, and nothing was saved.%nMaybe load it again and make the change once more.")
                        .formatted(expectedVersion, now.name(), now.version(), now.changedAt()));
    }

    static ChangedMeanwhile removed(String name) {
        return new ChangedMeanwhile(
                ("homestead [%s] was removed meanwhile, and nothing was saved." + "%nMaybe add it as a new one.")
                        .formatted(name));
    }
}
