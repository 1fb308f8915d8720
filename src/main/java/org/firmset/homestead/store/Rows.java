package org.firmset.homestead.store;

import jakarta.persistence.EntityManager;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The rows of one homestead within one transaction. */
record Rows(EntityManager entities, HomesteadRow homestead) {

    /** In the order of their list. */
    <R extends Row<?>> List<R> of(Class<R> type) {
        return entities.createQuery(
                        "select r from " + type.getSimpleName()
                                + " r where r.homestead = :homestead order by r.position",
                        type)
                .setParameter("homestead", homestead)
                .getResultList();
    }

    @Nullable
    TravelRow travel() {
        return entities.find(TravelRow.class, homestead.id());
    }

    /** What names others first, as the foreign keys demand. */
    void removeAll() {
        TravelRow travel = travel();
        if (travel != null) {
            entities.remove(travel);
        }
        Part.ALL.reversed().forEach(part -> of(part.type()).forEach(entities::remove));
        entities.remove(homestead);
    }
}
