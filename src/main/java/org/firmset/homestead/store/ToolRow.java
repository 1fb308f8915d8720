package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import org.firmset.homestead.Tool;
import org.firmset.measure.Power;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "tool")
class ToolRow extends KeyedRow<Tool> {
    private String name;

    @Column(name = "tool_count")
    private int count;

    @Column(name = "draw_w")
    private @Nullable Power draw;

    private boolean allDay;
    private int dutyPercent;
    private @Nullable BigDecimal surgeFactor;

    private @Nullable ToolCostColumns cost;

    protected ToolRow() {}

    ToolRow(Slot slot, Tool record, Named named) {
        super(slot);
        become(record, named);
    }

    @Override
    void become(Tool record, Named named) {
        name = record.name();
        count = record.count();
        draw = record.draw();
        allDay = record.allDay();
        dutyPercent = record.dutyPercent();
        surgeFactor = record.surgeFactor();
        cost = ToolCostColumns.of(record.cost(), homestead());
    }

    @Override
    Tool toRecord() {
        return new Tool(
                key(),
                name,
                count,
                draw,
                allDay,
                dutyPercent,
                surgeFactor,
                cost == null ? null : cost.toRecord(homestead()));
    }
}
