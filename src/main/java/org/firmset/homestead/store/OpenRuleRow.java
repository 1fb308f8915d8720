package org.firmset.homestead.store;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.JoinTable;
import jakarta.persistence.ManyToMany;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Table;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.firmset.homestead.OpenRule;
import org.firmset.measure.Hours;

@Entity
@Table(name = "open_rule")
class OpenRuleRow extends KeyedRow<OpenRule> {
    @ElementCollection
    @CollectionTable(name = "open_rule_weekday", joinColumns = @JoinColumn(name = "open_rule_id"))
    @OrderColumn(name = "position")
    @Column(name = "weekday")
    @Enumerated(EnumType.STRING)
    private List<DayOfWeek> weekdays = new ArrayList<>();

    @Column(name = "first_on")
    private LocalDate from;

    @Column(name = "last_on")
    private LocalDate to;

    @Column(name = "site_quarter_hours")
    private Hours siteHours;

    @ManyToMany
    @JoinTable(
            name = "open_rule_person",
            joinColumns = @JoinColumn(name = "open_rule_id"),
            inverseJoinColumns = @JoinColumn(name = "person_id"))
    @OrderColumn(name = "position")
    private List<PersonRow> people = new ArrayList<>();

    protected OpenRuleRow() {}

    OpenRuleRow(Slot slot, OpenRule record, Named named) {
        super(slot);
        become(record, named);
    }

    @Override
    void become(OpenRule record, Named named) {
        refill(weekdays, record.weekdays());
        from = record.from();
        to = record.to();
        siteHours = record.siteHours();
        refill(people, record.people().stream().map(named::person).toList());
    }

    @Override
    OpenRule toRecord() {
        return new OpenRule(
                key(),
                weekdays,
                from,
                to,
                siteHours,
                people.stream().map(PersonRow::key).toList());
    }
}
