package brokenhouse.season;

import brokenhouse.season.words.Said;

/** Used wrongly on purpose, and in a circle with the words for it. */
public class Leaned {
    Said said() {
        return new Said();
    }
}
