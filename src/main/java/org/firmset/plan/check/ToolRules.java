package org.firmset.plan.check;

import static java.util.stream.Collectors.joining;

import java.time.LocalDate;
import java.util.List;
import java.util.TreeSet;
import org.firmset.plan.Rule;
import org.firmset.plan.Stage;
import org.firmset.plan.Tool;
import org.firmset.plan.WorkBlock;

/** Rule 8: on no date are more pieces of a tool in use than there are. */
final class ToolRules {
    /** A stage at work with the pieces of one tool that it keeps in use. */
    private record Hold(Stage stage, int pieces) {}

    private final Facts facts;
    private final Breaches breaches;

    ToolRules(Facts facts, Breaches breaches) {
        this.facts = facts;
        this.breaches = breaches;
    }

    /** Any date with a block is judged, a site day or not. */
    void check() {
        TreeSet<LocalDate> dates = new TreeSet<>();
        facts.schedule().blocks().forEach(block -> dates.add(block.date()));
        for (LocalDate date : dates) {
            List<Stage> atWork = atWork(date);
            facts.problem().tools().forEach(tool -> isThereForAll(tool, date, atWork));
        }
    }

    /** A stage counts once, however many blocks it has on the date and however little labour they are. */
    private List<Stage> atWork(LocalDate date) {
        return facts.blocksOn(date).stream()
                .map(WorkBlock::stage)
                .distinct()
                .flatMap(id -> facts.stage(id).stream())
                .toList();
    }

    private void isThereForAll(Tool tool, LocalDate date, List<Stage> atWork) {
        List<Hold> holds = atWork.stream()
                .flatMap(stage -> stage.tools().stream()
                        .filter(use -> use.tool().equals(tool.id()))
                        .map(use -> new Hold(stage, use.count())))
                .toList();
        long pieces = holds.stream().mapToLong(Hold::pieces).sum();
        if (pieces > tool.count()) {
            breaches.add(
                    Rule.TOOLS,
                    "On %s there are %s pieces of tool [%s] but %s are in use: %s",
                    date,
                    tool.count(),
                    tool.name(),
                    pieces,
                    inWords(holds));
        }
    }

    private static String inWords(List<Hold> holds) {
        return holds.stream()
                .map(hold -> "[%s] %s".formatted(hold.stage().name(), Integer.toString(hold.pieces())))
                .collect(joining(", "));
    }
}
