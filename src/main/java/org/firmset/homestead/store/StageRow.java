package org.firmset.homestead.store;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.JoinTable;
import jakarta.persistence.ManyToMany;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.firmset.homestead.Hazard;
import org.firmset.homestead.Stage;
import org.firmset.homestead.StageLayout;
import org.firmset.measure.Energy;
import org.firmset.measure.Hours;
import org.firmset.measure.Volume;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "stage")
class StageRow extends KeyedRow<Stage> {
    private String name;

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    private SubprojectRow subproject;

    @Column(name = "labour_quarter_hours")
    private Hours labour;

    private int crew;

    @Enumerated(EnumType.STRING)
    private StageLayout layout;

    @Column(name = "least_block_quarter_hours")
    private @Nullable Hours leastBlock;

    @Column(name = "most_per_day_quarter_hours")
    private @Nullable Hours mostPerDay;

    @Column(name = "energy_per_hour_wh")
    private @Nullable Energy energyPerHour;

    @ManyToMany
    @JoinTable(
            name = "stage_tool",
            joinColumns = @JoinColumn(name = "stage_id"),
            inverseJoinColumns = @JoinColumn(name = "tool_id"))
    @OrderColumn(name = "position")
    private List<ToolRow> tools = new ArrayList<>();

    private @Nullable SeasonColumns season;
    private @Nullable LocalDate notBefore;
    private @Nullable LocalDate notAfter;
    private @Nullable ConditionsColumns conditions;

    @ElementCollection
    @CollectionTable(name = "need", joinColumns = @JoinColumn(name = "stage_id"))
    @OrderColumn(name = "position")
    private List<NeedColumns> needs = new ArrayList<>();

    @ElementCollection
    @CollectionTable(name = "stage_hazard", joinColumns = @JoinColumn(name = "stage_id"))
    @OrderColumn(name = "position")
    @Column(name = "hazard")
    @Enumerated(EnumType.STRING)
    private List<Hazard> hazards = new ArrayList<>();

    private @Nullable ProgressColumns progress;
    private @Nullable String note;

    @ElementCollection
    @CollectionTable(name = "stage_tool_time", joinColumns = @JoinColumn(name = "stage_id"))
    @OrderColumn(name = "position")
    private List<ToolTimeColumns> toolTimes = new ArrayList<>();

    private boolean headLamp;

    @Column(name = "water_m3")
    private @Nullable Volume water;

    protected StageRow() {}

    StageRow(Slot slot, Stage record, Named named) {
        super(slot);
        become(record, named);
    }

    @Override
    void become(Stage record, Named named) {
        name = record.name();
        subproject = named.subproject(record.subproject());
        labour = record.labour();
        crew = record.crew();
        layout = record.layout();
        leastBlock = record.leastBlock();
        mostPerDay = record.mostPerDay();
        energyPerHour = record.energyPerHour();
        season = SeasonColumns.of(record.season());
        notBefore = record.notBefore();
        notAfter = record.notAfter();
        conditions = ConditionsColumns.of(record.conditions());
        progress = ProgressColumns.of(record.progress());
        note = record.note();
        headLamp = record.headLamp();
        water = record.water();
        refill(
                toolTimes,
                record.toolTimes().stream()
                        .map(t -> ToolTimeColumns.of(t, named))
                        .toList());
        refill(tools, record.tools().stream().map(named::tool).toList());
        refill(
                needs,
                record.needs().stream()
                        .map(need -> new NeedColumns(named.material(need.material()), need.packs()))
                        .toList());
        refill(hazards, record.hazards());
    }

    @Override
    Stage toRecord() {
        return new Stage(
                key(),
                name,
                subproject.key(),
                labour,
                crew,
                layout,
                leastBlock,
                mostPerDay,
                energyPerHour,
                tools.stream().map(ToolRow::key).toList(),
                season == null ? null : season.toRecord(),
                notBefore,
                notAfter,
                conditions == null ? null : conditions.toRecord(),
                needs.stream().map(NeedColumns::toRecord).toList(),
                hazards,
                progress == null ? null : progress.toRecord(),
                note,
                toolTimes.stream().map(ToolTimeColumns::toRecord).toList(),
                headLamp,
                water);
    }
}
