package org.firmset.season.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

@Entity
@Table(name = "season_plan")
class SeasonPlanRow {
    @Id
    private UUID id;

    @Column(name = "homestead_id")
    private UUID homestead;

    @Column(name = "homestead_version")
    private long homesteadVersion;

    private LocalDate statusDate;
    private String style;
    private Instant madeAt;
    private String document;

    protected SeasonPlanRow() {}

    SeasonPlanRow(UUID id, KeptPlan plan, String document) {
        this.id = id;
        homestead = plan.homestead();
        homesteadVersion = plan.homesteadVersion();
        statusDate = plan.report().statusDate();
        style = plan.report().style().name();
        madeAt = plan.madeAt();
        this.document = document;
    }

    UUID homestead() {
        return homestead;
    }

    long homesteadVersion() {
        return homesteadVersion;
    }

    Instant madeAt() {
        return madeAt;
    }

    String document() {
        return document;
    }
}
