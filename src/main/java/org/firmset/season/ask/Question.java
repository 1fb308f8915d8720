package org.firmset.season.ask;

/** What an owner may ask of a plan. Keys are those of the homestead. */
public sealed interface Question {

    /** What would have to change for a subproject to finish one site day sooner. */
    record Finish(String subproject) implements Question {}

    /** What would let a stage start one site day sooner, and how far it can slip at the most. */
    record Start(String stage) implements Question {}

    /** What a trip is good for. @param trip its first date */
    record TripWorth(String trip) implements Question {}

    /** What would be without the deliveries of a supplier, and what fetching its goods would take. */
    record Deliveries(String supplier) implements Question {}

    /** Which of the changes since the plan before moved what. */
    record Causes() implements Question {}

    /** What each style would make of the same homestead. */
    record Styles() implements Question {}
}
