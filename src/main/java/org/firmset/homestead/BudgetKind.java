package org.firmset.homestead;

import org.firmset.measure.Worded;

/** What an item of the budget is for. */
public enum BudgetKind implements Worded {
    FEE("fee or permit"),
    TOOL("tool or hire"),
    OTHER("other");

    private final String words;

    BudgetKind(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
