package org.firmset.season.store;

import org.firmset.homestead.store.Changes;
import org.firmset.season.money.SeedBudget;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Keeps the first budget of the demo beside its homestead. */
@Component
class DemoBaseline {
    private final Baselines baselines;

    DemoBaseline(Baselines baselines) {
        this.baselines = baselines;
    }

    @EventListener
    void added(Changes.DemoAdded demo) {
        baselines.keep(demo.homestead(), SeedBudget.demo(demo.weeks()));
    }
}
