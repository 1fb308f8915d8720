package org.firmset.plan.check;

import static java.time.temporal.ChronoUnit.DAYS;

import java.time.LocalDate;
import java.util.List;
import org.firmset.plan.Rule;
import org.firmset.plan.Stage;
import org.firmset.plan.WorkBlock;

/** Rule 1: all labour is placed, in blocks of the right size on the right days. */
final class LabourRules {
    private final Facts facts;
    private final Breaches breaches;

    LabourRules(Facts facts, Breaches breaches) {
        this.facts = facts;
        this.breaches = breaches;
    }

    void check() {
        facts.schedule().blocks().forEach(this::isOfKnownStage);
        facts.schedule().blocks().forEach(this::liesOnSiteDay);
        for (Stage stage : facts.problem().stages()) {
            List<WorkBlock> blocks = facts.blocksOf(stage.id());
            if (stage.finished()) {
                finishedHasNone(stage, blocks);
            } else {
                addsUp(stage, blocks);
                hasOneBlockOnADate(stage, blocks);
                blocks.forEach(b -> isNotUnderLeast(stage, b));
                blocks.forEach(b -> isNotOverMost(stage, b));
                keepsLayout(stage, blocks);
            }
        }
    }

    private void isOfKnownStage(WorkBlock block) {
        if (facts.stage(block.stage()).isEmpty()) {
            breach(
                    "A block of %s quarter-hours on %s is for stage [%s], which is not known",
                    block.quarters(), block.date(), block.stage());
        }
    }

    private void liesOnSiteDay(WorkBlock block) {
        if (facts.siteDay(block.date()).isEmpty()) {
            String name = facts.stage(block.stage()).map(Stage::name).orElse(block.stage());
            breach("Stage [%s] works on %s, which is not a site day", name, block.date());
        }
    }

    private void finishedHasNone(Stage stage, List<WorkBlock> blocks) {
        if (!blocks.isEmpty()) {
            breach(
                    "Stage [%s] was finished on %s but has %s blocks, the first on %s",
                    stage.name(),
                    String.valueOf(stage.finishedOn()),
                    blocks.size(),
                    blocks.getFirst().date());
        }
    }

    private void addsUp(Stage stage, List<WorkBlock> blocks) {
        long placed = blocks.stream().mapToLong(WorkBlock::quarters).sum();
        if (placed != stage.labourQuarters()) {
            breach(
                    "Stage [%s] has %s quarter-hours of labour to do but its blocks add up to %s",
                    stage.name(), stage.labourQuarters(), placed);
        }
    }

    private void hasOneBlockOnADate(Stage stage, List<WorkBlock> blocks) {
        for (int i = 1; i < blocks.size(); i++) {
            LocalDate date = blocks.get(i).date();
            if (date.equals(blocks.get(i - 1).date())) {
                breach("Stage [%s] has more than one block on %s", stage.name(), date);
            }
        }
    }

    private void isNotUnderLeast(Stage stage, WorkBlock block) {
        if (block.quarters() < stage.effectiveLeastBlock()) {
            breach(
                    "Stage [%s] works %s quarter-hours on %s but its least block is %s",
                    stage.name(), block.quarters(), block.date(), stage.effectiveLeastBlock());
        }
    }

    private void isNotOverMost(Stage stage, WorkBlock block) {
        if (block.quarters() > stage.mostBlockQuarters()) {
            breach(
                    "Stage [%s] works %s quarter-hours on %s but can take at most %s on one day",
                    stage.name(), block.quarters(), block.date(), stage.mostBlockQuarters());
        }
    }

    private void keepsLayout(Stage stage, List<WorkBlock> blocks) {
        switch (stage.layout()) {
            case IN_ONE_GO -> hasOneBlock(stage, blocks);
            case UNBROKEN_DAYS -> hasNoGap(stage, blocks);
            case SPLITTABLE -> {}
        }
    }

    /** No block at all is found where the labour is added up. */
    private void hasOneBlock(Stage stage, List<WorkBlock> blocks) {
        if (blocks.size() > 1) {
            breach(
                    "Stage [%s] must be done in one go but has %s blocks, the first on %s and the last on %s",
                    stage.name(),
                    blocks.size(),
                    blocks.getFirst().date(),
                    blocks.getLast().date());
        }
    }

    private void hasNoGap(Stage stage, List<WorkBlock> blocks) {
        for (int i = 1; i < blocks.size(); i++) {
            LocalDate earlier = blocks.get(i - 1).date();
            LocalDate later = blocks.get(i).date();
            if (DAYS.between(earlier, later) > 1) {
                breach(
                        "Stage [%s] must be done on unbroken days but does not work between %s and %s",
                        stage.name(), earlier, later);
            }
        }
    }

    private void breach(String sentence, Object... parts) {
        breaches.add(Rule.LABOUR, sentence, parts);
    }
}
