package org.firmset.plan;

/** Hears how far a search is. Called often, on the thread that plans: answer at once. */
@FunctionalInterface
public interface Progress {
    /**
     * @param plans plans built so far
     * @param inAll plans the search may build
     */
    void built(int plans, int inAll);
}
