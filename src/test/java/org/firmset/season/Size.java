package org.firmset.season;

/** How large a random homestead is. */
enum Size {
    /** Small enough to look at every plan there is: few hours, few days, nothing to carry. */
    TINY(4, 3, 2, 2, 0),
    SMALL(7, 14, 4, 3, 5),
    LARGE(14, 25, 4, 4, 7);

    private final int mostStages;
    private final int mostTrips;
    private final int mostPeople;
    private final int mostSubprojects;
    private final int mostMaterials;

    Size(int mostStages, int mostTrips, int mostPeople, int mostSubprojects, int mostMaterials) {
        this.mostStages = mostStages;
        this.mostTrips = mostTrips;
        this.mostPeople = mostPeople;
        this.mostSubprojects = mostSubprojects;
        this.mostMaterials = mostMaterials;
    }

    static Size by(Dice dice) {
        return dice.chance(25) ? TINY : dice.chance(65) ? SMALL : LARGE;
    }

    int mostStages() {
        return mostStages;
    }

    int mostTrips() {
        return mostTrips;
    }

    int mostPeople() {
        return mostPeople;
    }

    int mostSubprojects() {
        return mostSubprojects;
    }

    int mostMaterials() {
        return mostMaterials;
    }
}
