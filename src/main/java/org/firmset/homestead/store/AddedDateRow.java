package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.JoinTable;
import jakarta.persistence.ManyToMany;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.firmset.homestead.AddedDate;
import org.firmset.measure.Hours;

@Entity
@Table(name = "added_date")
class AddedDateRow extends Row<AddedDate> {
    @Column(name = "added_on")
    private LocalDate date;

    @Column(name = "site_quarter_hours")
    private Hours siteHours;

    @ManyToMany
    @JoinTable(
            name = "added_date_person",
            joinColumns = @JoinColumn(name = "added_date_id"),
            inverseJoinColumns = @JoinColumn(name = "person_id"))
    @OrderColumn(name = "position")
    private List<PersonRow> people = new ArrayList<>();

    protected AddedDateRow() {}

    AddedDateRow(Slot slot, AddedDate record, Named named) {
        super(slot);
        become(record, named);
    }

    @Override
    void become(AddedDate record, Named named) {
        date = record.date();
        siteHours = record.siteHours();
        refill(people, record.people().stream().map(named::person).toList());
    }

    @Override
    AddedDate toRecord() {
        return new AddedDate(
                date, siteHours, people.stream().map(PersonRow::key).toList());
    }
}
