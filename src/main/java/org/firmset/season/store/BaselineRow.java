package org.firmset.season.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

@Entity
@Table(name = "baseline")
class BaselineRow {
    @Id
    private UUID id;

    @Column(name = "homestead_id")
    private UUID homestead;

    private LocalDate keptOn;
    private Instant madeAt;
    private String document;

    protected BaselineRow() {}

    BaselineRow(UUID id, UUID homestead, LocalDate keptOn, Instant madeAt, String document) {
        this.id = id;
        this.homestead = homestead;
        this.keptOn = keptOn;
        this.madeAt = madeAt;
        this.document = document;
    }

    UUID id() {
        return id;
    }

    UUID homestead() {
        return homestead;
    }

    LocalDate keptOn() {
        return keptOn;
    }

    String document() {
        return document;
    }
}
