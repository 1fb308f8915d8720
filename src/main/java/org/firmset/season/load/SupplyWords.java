package org.firmset.season.load;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.firmset.measure.Cash;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Units;
import org.firmset.season.words.Dates;
import org.firmset.season.words.PackWords;
import org.firmset.season.words.WordTable;
import org.javamoney.moneta.Money;

/** Says in plain words what a trip buys and what it finds and leaves on site, for page and terminal alike. */
public final class SupplyWords {
    private final UnitSystem units;

    public SupplyWords(UnitSystem units) {
        this.units = units;
    }

    /** What to buy for a run, stop by stop. */
    public List<WordTable> shopping(SeasonSupplies.RunList list, TripLoads loads) {
        return list.stops().stream().map(stop -> stop(stop, loads)).toList();
    }

    private WordTable stop(SeasonSupplies.Stop stop, TripLoads loads) {
        LocalDate by = stop.orderBy();
        String title = "%s: %s, %s%s"
                .formatted(
                        capital(stop.name()),
                        Units.show(stop.mass(), units),
                        money(stop.cost()),
                        by == null ? "" : ", order by " + Dates.date(by));
        return new WordTable(
                title,
                List.of("What", "Mass", "Cost"),
                stop.lines().stream()
                        .map(l -> List.of(
                                packs(l, loads),
                                Units.show(l.mass(), units),
                                l.cost() == null ? "no price" : money(l.cost())))
                        .toList());
    }

    private static String packs(SeasonSupplies.Line line, TripLoads loads) {
        return loads.stock().stream()
                .filter(s -> s.material().equals(line.material()))
                .map(s -> PackWords.of(line.packs(), s.pack(), s.name()))
                .findFirst()
                .orElse(line.packs() + " of " + line.material());
    }

    /** What is on site before and after, and what the rest is for. */
    public static WordTable stock(TripLoads loads) {
        return new WordTable(
                "On site before and after",
                List.of("What", "Before", "Comes", "Used", "After", "What is left then"),
                loads.stock().stream().map(SupplyWords::stock).toList());
    }

    private static List<String> stock(TripLoads.Stock stock) {
        String off = stock.goneOff() == 0 ? "" : stock.goneOff() + " gone off; ";
        String rest = stock.after() == 0
                ? "nothing"
                : stock.next() == null
                        ? "spare: no later work of the plan needs it"
                        : "for %s, %s"
                                .formatted(
                                        stock.next().stage(),
                                        Dates.day(stock.next().date()));
        return List.of(
                "%s (%s)".formatted(stock.name(), stock.pack()),
                Integer.toString(stock.before()),
                Integer.toString(stock.arrived()),
                Integer.toString(stock.used()),
                Integer.toString(stock.after()),
                off + rest);
    }

    /** Empty when there is no dry room. */
    public Optional<String> dryRoom(TripLoads loads) {
        TripLoads.DryRoom room = loads.dryRoom();
        return room == null
                ? Optional.empty()
                : Optional.of(
                        "Dry room: %s before the trip, %s on its fullest evening, %s after it; there is room for %s."
                                .formatted(
                                        Units.show(room.before(), units),
                                        Units.show(room.most(), units),
                                        Units.show(room.after(), units),
                                        Units.show(room.limit(), units)));
    }

    static String money(Money money) {
        return Cash.show(Cash.cents(money), money.getCurrency().getCurrencyCode());
    }

    static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
