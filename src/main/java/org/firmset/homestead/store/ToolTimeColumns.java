package org.firmset.homestead.store;

import jakarta.persistence.Embeddable;
import jakarta.persistence.FetchType;
import jakarta.persistence.ManyToOne;
import java.math.BigDecimal;
import org.firmset.homestead.ToolTime;
import org.jspecify.annotations.Nullable;

@Embeddable
record ToolTimeColumns(
        @ManyToOne(fetch = FetchType.LAZY, optional = false) ToolRow tool,
        BigDecimal minutes,
        @ManyToOne(fetch = FetchType.LAZY) @Nullable MaterialRow material) {

    static ToolTimeColumns of(ToolTime time, Named named) {
        return new ToolTimeColumns(
                named.tool(time.tool()),
                time.minutes(),
                time.material() == null ? null : named.material(time.material()));
    }

    ToolTime toRecord() {
        return new ToolTime(tool.key(), minutes, material == null ? null : material.key());
    }
}
