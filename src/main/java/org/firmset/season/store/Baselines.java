package org.firmset.season.store;

import jakarta.persistence.EntityManager;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.firmset.season.money.BudgetDocument;
import org.firmset.spend.Baseline;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Budgets that were kept, each for good until it is removed; a later one stands beside the earlier. Thread-safe. */
@Service
public class Baselines {
    private final EntityManager entities;
    private final Clock clock;

    Baselines(EntityManager entities, Clock clock) {
        this.entities = entities;
        this.clock = clock;
    }

    /**
     * @throws IllegalArgumentException when it could not be read again, and is not kept: nothing could ever be held
     *     against it
     */
    @Transactional
    public KeptBaseline keep(UUID homestead, Baseline budget) {
        UUID id = UUID.randomUUID();
        String document = BudgetDocument.write(budget);
        if (!(read(document) instanceof BudgetDocument.Whole)) {
            throw new IllegalArgumentException("the budget of [" + budget.on() + "] would not be read again");
        }
        entities.persist(
                new BaselineRow(id, homestead, budget.on(), clock.instant().truncatedTo(ChronoUnit.MICROS), document));
        return new KeptBaseline(id, budget);
    }

    /** @param currency ISO 4217 code of the homestead's one currency; budgets in another cannot be used */
    @Transactional(readOnly = true)
    public KeptBudgets all(UUID homestead, String currency) {
        List<KeptBaseline> whole = new ArrayList<>();
        List<KeptBudgets.Unread> unread = new ArrayList<>();
        for (BaselineRow row : rows(homestead)) {
            switch (read(row.document())) {
                case BudgetDocument.Whole(Baseline budget)
                when budget.isAllIn(currency) -> whole.add(new KeptBaseline(row.id(), budget));
                case BudgetDocument.Whole other -> unread.add(unread(row, "it is not all in " + currency));
                case BudgetDocument.Unreadable(String why) -> unread.add(unread(row, why));
                case BudgetDocument.NoBudget no -> unread.add(unread(row, "what was stored is no whole budget"));
            }
        }
        return new KeptBudgets(whole, unread);
    }

    private List<BaselineRow> rows(UUID homestead) {
        return entities.createQuery(
                        "from BaselineRow b where b.homestead = :homestead order by b.madeAt, b.id", BaselineRow.class)
                .setParameter("homestead", homestead)
                .getResultList();
    }

    private static KeptBudgets.Unread unread(BaselineRow row, String why) {
        return new KeptBudgets.Unread(row.id(), row.keptOn(), why);
    }

    /** Whether it was there. */
    @Transactional
    public boolean remove(UUID homestead, UUID id) {
        BaselineRow row = entities.find(BaselineRow.class, id);
        boolean there = row != null && row.homestead().equals(homestead);
        if (there) {
            entities.remove(row);
        }
        return there;
    }

    private static BudgetDocument read(String document) {
        return BudgetDocument.read(document.getBytes(StandardCharsets.UTF_8));
    }
}
