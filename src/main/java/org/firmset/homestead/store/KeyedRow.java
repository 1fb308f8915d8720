package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.MappedSuperclass;

/** A thing that others name by its key. */
@MappedSuperclass
abstract class KeyedRow<T> extends Row<T> {
    @Column(name = "key_text", updatable = false)
    private String key;

    protected KeyedRow() {}

    KeyedRow(Slot slot) {
        super(slot);
        this.key = slot.key();
    }

    String key() {
        return key;
    }
}
