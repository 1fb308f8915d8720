package org.firmset.homestead.store;

import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.MappedSuperclass;
import java.util.List;
import java.util.UUID;

/** One thing in a list of a homestead. */
@MappedSuperclass
abstract class Row<T> {
    @Id
    private UUID id;

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "homestead_id", updatable = false)
    private HomesteadRow homestead;

    private int position;

    protected Row() {}

    Row(Slot slot) {
        this.id = slot.id();
        this.homestead = slot.homestead();
        this.position = slot.position();
    }

    /** Takes on what the record says; the id and what other tables refer to stay. */
    @Initializer
    abstract void become(T record, Named named);

    abstract T toRecord();

    void moveTo(int place) {
        this.position = place;
    }

    UUID id() {
        return id;
    }

    HomesteadRow homestead() {
        return homestead;
    }

    /** Changes the list itself, which Hibernate watches, and only when there is something to change. */
    static <E> void refill(List<E> list, List<E> wanted) {
        if (!list.equals(wanted)) {
            list.clear();
            list.addAll(wanted);
        }
    }
}
