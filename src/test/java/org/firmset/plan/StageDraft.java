package org.firmset.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A stage for a test, plain until told otherwise. */
public final class StageDraft {
    private final String id;
    private String subproject;
    private final int quarters;
    private int crew = 1;
    private Layout layout = Layout.SPLITTABLE;
    private int leastBlock = 0;
    private int mostBlock = Stage.NO_LIMIT;
    private long wattHoursPerHour = 0;
    private boolean needsLight = true;
    private final List<Shut> shut = new ArrayList<>();
    private final List<Need> needs = new ArrayList<>();
    private final List<ToolUse> tools = new ArrayList<>();
    private @Nullable LocalDate startedOn;
    private @Nullable LocalDate finishedOn;

    StageDraft(String id, String subproject, int quarters) {
        this.id = id;
        this.subproject = subproject;
        this.quarters = quarters;
    }

    /** Of another subproject than the one that is always there. */
    public StageDraft of(String other) {
        subproject = other;
        return this;
    }

    public StageDraft crew(int people) {
        crew = people;
        return this;
    }

    public StageDraft layout(Layout lies) {
        layout = lies;
        return this;
    }

    public StageDraft leastBlock(int ofQuarters) {
        leastBlock = ofQuarters;
        return this;
    }

    public StageDraft mostBlock(int ofQuarters) {
        mostBlock = ofQuarters;
        return this;
    }

    public StageDraft draws(long wattHoursForAnHour) {
        wattHoursPerHour = wattHoursForAnHour;
        return this;
    }

    /** It may go on by head-lamp. */
    public StageDraft byHeadLamp() {
        needsLight = false;
        return this;
    }

    public StageDraft shut(String from, String to, String why) {
        shut.add(new Shut(LocalDate.parse(from), LocalDate.parse(to), why));
        return this;
    }

    public StageDraft needs(String material, int packs) {
        needs.add(new Need(material, packs));
        return this;
    }

    public StageDraft uses(String tool, int count) {
        tools.add(new ToolUse(tool, count));
        return this;
    }

    public StageDraft startedOn(String date) {
        startedOn = LocalDate.parse(date);
        return this;
    }

    public StageDraft finishedOn(String date) {
        finishedOn = LocalDate.parse(date);
        return this;
    }

    Stage stage() {
        return new Stage(
                id,
                Problems.name(id),
                subproject,
                quarters,
                crew,
                layout,
                leastBlock,
                mostBlock,
                wattHoursPerHour,
                needsLight,
                shut,
                needs,
                tools,
                startedOn,
                finishedOn);
    }
}
