package org.firmset.plan.search;

/**
 * What the search varies: which stage goes first, which trips are not made, and how far materials come ahead.
 *
 * @param priority for each stage; the highest among those that can go next is placed first
 * @param closedTrip trips on which nothing is done
 */
record Genes(double[] priority, boolean[] closedTrip, Fetching fetching) {

    Genes copy() {
        return new Genes(priority.clone(), closedTrip.clone(), fetching);
    }
}
