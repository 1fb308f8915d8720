package brokenhouse.season.words;

import brokenhouse.season.Leaned;

/** Wrong on purpose: words that know what they are said of, which says them. */
public class Said {
    Leaned of() {
        return new Leaned();
    }
}
