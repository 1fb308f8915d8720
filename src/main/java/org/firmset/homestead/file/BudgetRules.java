package org.firmset.homestead.file;

import java.util.ArrayList;
import java.util.List;
import org.firmset.homestead.BudgetItem;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Stage;
import org.firmset.homestead.Tool;
import org.firmset.homestead.ToolCost;

/** What tools cost and what stands in the budget besides can be reckoned with. */
final class BudgetRules {
    private final List<Fault> faults = new ArrayList<>();

    private BudgetRules() {}

    static List<Fault> faults(Homestead homestead) {
        BudgetRules rules = new BudgetRules();
        for (int i = 0; i < homestead.tools().size(); i++) {
            Tool tool = homestead.tools().get(i);
            if (tool.cost() != null) {
                rules.check(tool.cost(), "/tools/" + i + "/cost");
            }
        }
        List<BudgetItem> items = homestead.budgetingOrPlain().items();
        for (int i = 0; i < items.size(); i++) {
            rules.check(items.get(i), homestead, "/budgeting/items/" + i);
        }
        return rules.faults;
    }

    private void check(ToolCost cost, String pointer) {
        if (cost.price() == null && cost.hireADay() == null) {
            faults.add(new Fault(
                    pointer,
                    "",
                    "names neither a price nor a hire",
                    "Write what it costs to buy or to hire a day, or leave the cost out when the tool is there"));
        }
    }

    private void check(BudgetItem item, Homestead homestead, String pointer) {
        homestead.stages().stream()
                .filter(s -> s.key().equals(item.stage()))
                .map(Stage::subproject)
                .filter(s -> !s.equals(item.subproject()))
                .findFirst()
                .ifPresent(s -> faults.add(new Fault(
                        pointer + "/stage",
                        String.valueOf(item.stage()),
                        "is a stage of '" + s + "', not of '" + item.subproject() + "'",
                        "Write a stage of this subproject, or leave the stage out")));
    }
}
