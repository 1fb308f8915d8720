package org.firmset.season.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicBoolean;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.store.Homesteads;
import org.firmset.season.ReceiptNews;
import org.firmset.season.Seasons;
import org.firmset.season.money.Books;
import org.firmset.season.money.MoneyReport;
import org.firmset.season.money.Purchases;
import org.firmset.season.result.PlannedHomestead;
import org.firmset.season.result.SeasonReport;
import org.firmset.season.store.Baselines;
import org.firmset.season.store.KeptBaseline;
import org.firmset.season.store.KeptBudgets;
import org.firmset.shell.Frame;
import org.firmset.spend.store.ReceiptBook;
import org.firmset.spend.ui.SpendPages;
import org.jspecify.annotations.Nullable;

/**
 * Where the money went, what comes when, and where it will end. Each figure of money spent leads to its receipts. Follows
 * the plan and the receipts.
 */
@Route(value = SpendPages.OVERVIEW, layout = Frame.class)
@PageTitle("Firmset: spend")
class SpendView extends SeasonPage {
    private final ReceiptBook book;
    private final Baselines baselines;
    private final ReceiptNews news;
    private @Nullable SpendSections sections;
    private Optional<UUID> against = Optional.empty();

    SpendView(Homesteads homesteads, Seasons seasons, ReceiptBook book, Baselines baselines, ReceiptNews news) {
        super(homesteads, seasons);
        this.book = book;
        this.baselines = baselines;
        this.news = news;
        addClassName("fs-spend");
    }

    @Override
    protected void onAttach(AttachEvent attached) {
        opened().ifPresent(id -> follow(attached.getUI(), id));
        super.onAttach(attached);
    }

    /** Receipts that are told while the page still waits for its turn are shown with those before. */
    private void follow(UI ui, UUID homestead) {
        AtomicBoolean waiting = new AtomicBoolean();
        Seasons.Listening listening = news.listen(homestead, () -> {
            if (!waiting.getAndSet(true)) {
                Listener.tell(ui, () -> {
                    waiting.set(false);
                    showAgain();
                });
            }
        });
        addDetachListener(e -> {
            e.unregisterListener();
            listening.end();
        });
    }

    /** Sections stay, with what is typed into them. */
    @Override
    void clear() {
        if (sections == null) {
            removeAll();
        }
    }

    @Override
    void show(Homestead homestead, SeasonReport report) {
        opened().ifPresent(id ->
                seasons().latest(id).ifPresentOrElse(planned -> show(id, planned, report), this::waitForThePlan));
    }

    private void waitForThePlan() {
        showAnewWhenPlanned();
        removeAll();
        sections = null;
        add(new H1("Spend"), new Paragraph("The plan is being made again; the money is reckoned in a moment."));
    }

    private void show(UUID id, PlannedHomestead planned, SeasonReport report) {
        MoneyReport money = reckon(id, planned, report.statusDate());
        KeptBudgets kept = baselines.all(id, money.currency());
        Optional<KeptBaseline> chosen = kept.whole().stream()
                .filter(k -> against.filter(k.id()::equals).isPresent())
                .findFirst()
                .or(() -> kept.whole().stream().findFirst());
        sectionsOf(id, money).show(money, report, kept, chosen);
    }

    private MoneyReport reckon(UUID id, PlannedHomestead planned, LocalDate today) {
        Purchases.Writer purchases = new Purchases.Writer(planned.homestead().currency());
        book.each(id, kept -> purchases.add(kept.receipt()));
        return MoneyReport.of(new Books(planned.homestead(), planned.season(), purchases.done(), today));
    }

    private SpendSections sectionsOf(UUID id, MoneyReport money) {
        SpendSections there = sections;
        if (there == null || there.getParent().isEmpty()) {
            removeAll();
            there = new SpendSections(
                    seasons(),
                    baselines,
                    id,
                    money,
                    planned -> reckon(id, planned, seasons().today()),
                    this::holdAgainst);
            add(there);
            sections = there;
        }
        return there;
    }

    private void holdAgainst(UUID budget) {
        against = Optional.of(budget);
        showAgain();
    }
}
