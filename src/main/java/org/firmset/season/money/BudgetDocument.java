package org.firmset.season.money;

import org.firmset.homestead.file.Fault;
import org.firmset.homestead.file.RecordJson;
import org.firmset.measure.UnitSystem;
import org.firmset.spend.Baseline;

/** A budget that was kept as a document, as far as this version of the program can read it. */
public sealed interface BudgetDocument {
    /** All of it. */
    record Whole(Baseline budget) implements BudgetDocument {}

    /** A budget, but not one to be held against anything. @param why goes on after 'cannot be read: ' */
    record Unreadable(String why) implements BudgetDocument {
        /** All that people need to know. @param what 'the budget of Sat 5 Sep 2026' */
        public String told(String what) {
            return what + " cannot be read: " + why
                    + ". It is left as it is and nothing of it is lost. All else is reckoned without it.";
        }
    }

    /** Something else altogether. */
    record NoBudget() implements BudgetDocument {}

    /** The text that {@link #read} reads back. */
    static String write(Baseline budget) {
        return RecordJson.write(MoneyReport.BUDGET, budget, UnitSystem.METRIC);
    }

    /** @param document bytes in UTF-8 */
    static BudgetDocument read(byte[] document) {
        return switch (RecordJson.reading(MoneyReport.BUDGET, Baseline.class, document)) {
            case RecordJson.Read.Whole<Baseline> whole -> new Whole(whole.content());
            case RecordJson.Read.Broken<Baseline> broken when !broken.ofThisKind() -> new NoBudget();
            case RecordJson.Read.Broken<Baseline> broken
            when broken.ofAnotherVersion() -> new Unreadable("a later version of the program kept it, and can read it");
            case RecordJson.Read.Broken<Baseline> broken -> new Unreadable(why(broken.fault()));
        };
    }

    private static String why(Fault fault) {
        return "in it %s [%s] %s".formatted(fault.pointer(), fault.value(), fault.problem());
    }
}
