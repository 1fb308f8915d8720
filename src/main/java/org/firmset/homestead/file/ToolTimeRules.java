package org.firmset.homestead.file;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Stage;
import org.firmset.homestead.Tool;
import org.firmset.homestead.ToolTime;
import org.jspecify.annotations.Nullable;

/**
 * Tools that run draw power. That a stage uses up what they run for is not asked: minutes for packs it does not need are no energy,
 * and a takeoff must be free to go.
 */
final class ToolTimeRules {
    private final Map<String, Tool> tools = new HashMap<>();
    private final List<Fault> faults = new ArrayList<>();

    private ToolTimeRules(Homestead homestead) {
        homestead.tools().forEach(t -> tools.put(t.key(), t));
    }

    static List<Fault> faults(Homestead homestead) {
        ToolTimeRules rules = new ToolTimeRules(homestead);
        for (int i = 0; i < homestead.stages().size(); i++) {
            Stage stage = homestead.stages().get(i);
            Set<ToolTime> seen = new HashSet<>();
            for (int j = 0; j < stage.toolTimes().size(); j++) {
                rules.check(stage.toolTimes().get(j), seen, "/stages/" + i + "/toolTimes/" + j);
            }
        }
        return rules.faults;
    }

    private void check(ToolTime time, Set<ToolTime> seen, String pointer) {
        @Nullable String material = time.material();
        @Nullable Tool tool = tools.get(time.tool());
        if (tool != null && tool.draw() == null) {
            faults.add(new Fault(
                    pointer + "/tool",
                    time.tool(),
                    "draws no power, so its minutes say nothing",
                    "Write what it draws at the tool, or leave it out here"));
        }
        // whatever the minutes
        if (!seen.add(new ToolTime(time.tool(), BigDecimal.ZERO, material))) {
            faults.add(
                    new Fault(pointer + "/tool", time.tool(), "stands there twice", "Add the minutes up in one line"));
        }
    }
}
