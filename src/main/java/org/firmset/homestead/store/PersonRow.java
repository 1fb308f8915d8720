package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import org.firmset.homestead.Person;
import org.firmset.measure.Mass;

@Entity
@Table(name = "person")
class PersonRow extends KeyedRow<Person> {
    private String name;

    @Column(name = "mass_kg")
    private Mass mass;

    @Column(name = "work_share_percent")
    private int workShare;

    protected PersonRow() {}

    PersonRow(Slot slot, Person record, Named named) {
        super(slot);
        become(record, named);
    }

    @Override
    void become(Person record, Named named) {
        name = record.name();
        mass = record.mass();
        workShare = record.workShare();
    }

    @Override
    Person toRecord() {
        return new Person(key(), name, mass, workShare);
    }
}
