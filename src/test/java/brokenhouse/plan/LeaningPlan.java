package brokenhouse.plan;

import brokenhouse.season.Leaned;
import jakarta.persistence.Entity;

/** Wrong on purpose: a plan that knows the season above it, and persistence. */
@Entity
class LeaningPlan {
    Leaned leaned() {
        return new Leaned();
    }
}
