package org.firmset.season.money;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.firmset.homestead.Stage;
import org.firmset.homestead.Tool;
import org.firmset.homestead.ToolCost;
import org.firmset.spend.Allocation;
import org.firmset.spend.HireOrBuy;
import org.firmset.spend.LineKind;
import org.firmset.spend.Share;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** Tools that are still to be bought or hired: the cheaper of the two over all trips that use them, borne by days and hours. */
final class ToolsAhead {
    private final Books books;
    private final Ledger ledger;
    private final Map<String, Bearer> bearers;

    ToolsAhead(Books books, Ledger ledger) {
        this.books = books;
        this.ledger = ledger;
        bearers = books.bearers();
    }

    /** One trip on which a tool is used, with the labour of the stages that use it. */
    private record Trip(LocalDate first, int days, Map<String, Long> quarters) {}

    List<ToolChoice> write(List<MadeTrip> made) {
        List<ToolChoice> choices = new ArrayList<>();
        for (Tool tool : books.homestead().tools()) {
            List<Trip> trips = trips(tool, made);
            if (tool.cost() != null && !trips.isEmpty()) {
                choices.add(choose(tool, tool.cost(), trips));
            }
        }
        return choices;
    }

    private List<Trip> trips(Tool tool, List<MadeTrip> made) {
        List<String> stages = books.homestead().stages().stream()
                .filter(s -> s.tools().contains(tool.key()))
                .map(Stage::key)
                .toList();
        List<Trip> trips = new ArrayList<>();
        for (MadeTrip trip : made) {
            List<LocalDate> days = trip.daysOf(stages);
            if (!days.isEmpty()) {
                Map<String, Long> quarters = new LinkedHashMap<>(trip.quarters(trip.blocks()));
                quarters.keySet().retainAll(stages);
                trips.add(new Trip(trip.trip().firstDate(), days.size(), quarters));
            }
        }
        return trips;
    }

    private ToolChoice choose(Tool tool, ToolCost cost, List<Trip> trips) {
        HireOrBuy both = new HireOrBuy(
                orNothing(cost.price()),
                orNothing(cost.resale()),
                orNothing(cost.upkeep()),
                orNothing(cost.hireADay()),
                orNothing(cost.fetching()),
                trips.stream().map(t -> new HireOrBuy.Use(share(t), t.days())).toList());
        ToolChoice choice = ToolChoice.of(tool.key(), tool.name(), both, cost.price() != null, cost.hireADay() != null);
        borne(choice, trips);
        if (choice.buy()) {
            payBuying(tool, cost, trips);
        } else {
            for (Trip trip : trips) {
                Money hire = orNothing(cost.hireADay()).multiply(trip.days()).add(orNothing(cost.fetching()));
                pay(trip.first(), tool, hire);
            }
        }
        return choice;
    }

    private Share share(Trip trip) {
        String stage = trip.quarters().keySet().iterator().next();
        Bearer bearer = bearers.getOrDefault(stage, Bearer.NOBODY);
        return Share.all(String.valueOf(bearer.subproject()), bearer.stage());
    }

    private void borne(ToolChoice choice, List<Trip> trips) {
        List<Money> each = Allocation.split(
                choice.cost(),
                trips.stream().map(t -> BigDecimal.valueOf(t.days())).toList());
        for (int i = 0; i < trips.size(); i++) {
            Map<String, Long> quarters = trips.get(i).quarters();
            List<Money> parts = Allocation.split(
                    each.get(i),
                    quarters.values().stream().map(BigDecimal::valueOf).toList());
            int j = 0;
            for (String stage : quarters.keySet()) {
                ledger.coming.add(Coming.certain(
                        bearers.getOrDefault(stage, Bearer.NOBODY),
                        Purpose.TOOL,
                        LineKind.TOOL,
                        choice.key(),
                        BigDecimal.ZERO,
                        parts.get(j++),
                        trips.get(i).first()));
            }
        }
    }

    /** The price is to be there for the first trip; what the tool brings comes back after the last. */
    private void payBuying(Tool tool, ToolCost cost, List<Trip> trips) {
        pay(trips.getFirst().first(), tool, orNothing(cost.price()));
        trips.forEach(t -> pay(t.first(), tool, orNothing(cost.upkeep())));
        pay(
                trips.getLast().first().plusDays(trips.getLast().days()),
                tool,
                orNothing(cost.resale()).negate());
    }

    private void pay(LocalDate on, Tool tool, Money amount) {
        if (!amount.isZero()) {
            ledger.payments.add(new Payment(on, Purpose.TOOL, tool.key(), amount));
        }
    }

    private Money orNothing(@Nullable Money amount) {
        return amount == null ? books.cents(0) : amount;
    }
}
