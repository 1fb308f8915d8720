package org.firmset.season.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.firmset.measure.Cash;
import org.firmset.spend.Baseline;
import org.javamoney.moneta.Money;

/** What must be true of the parts of any difference to a budget. */
public final class MadeParts {
    private MadeParts() {}

    /** What stands between the first part and the last adds up to the last, and their gap is the difference. */
    public static void makeTheWhole(Baseline kept, MoneyReport now, String what) {
        MadeWords words = new MadeWords(now, kept);
        Money gap = Cash.ofCents(0, now.currency());
        for (BudgetDifference one : BudgetDifference.of(kept, now.budget())) {
            List<MadeWords.Part> parts = words.parts(one);
            Money made = parts.subList(1, parts.size() - 1).stream()
                    .filter(p -> !p.name().startsWith("of it "))
                    .map(MadeWords.Part::amount)
                    .reduce(Cash.ofCents(0, now.currency()), Money::add);
            Money is = parts.getLast().amount();
            assertThat(made).as(what + ", " + one).isEqualTo(is);
            assertThat(is.subtract(parts.getFirst().amount()))
                    .as(what + ", " + one)
                    .isEqualTo(one.difference().sum());
            assertThat(words.sums(one)).as(what + ", " + one).isNotEmpty();
            gap = gap.add(is).subtract(parts.getFirst().amount());
        }
        assertThat(gap).as(what).isEqualTo(now.budget().whole().subtract(kept.whole()));
    }
}
