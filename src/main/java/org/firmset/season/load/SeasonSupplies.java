package org.firmset.season.load;

import java.time.LocalDate;
import java.util.List;
import org.firmset.measure.Mass;
import org.firmset.measure.Volume;
import org.firmset.plan.RunKind;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * What a plan buys when, and what lies on site day by day.
 *
 * @param runs one shopping list for each run, in the order of the plan's dates
 * @param stock for each material that comes or is there, what happens to it
 * @param dryRoom for each date on which packs that must stay dry come or go, how full the dry room is in the evening
 */
public record SeasonSupplies(List<RunList> runs, List<StockStory> stock, List<DryRoom> dryRoom) {
    public SeasonSupplies {
        runs = List.copyOf(runs);
        stock = List.copyOf(stock);
        dryRoom = List.copyOf(dryRoom);
    }

    /** @param stops one for each supplier, in the order in which the homestead names them */
    public record RunList(String trip, LocalDate date, RunKind kind, List<Stop> stops) {
        public RunList {
            stops = List.copyOf(stops);
        }
    }

    /**
     * What one supplier gives to a run.
     *
     * @param supplier key of the supplier; null for what nobody has a price for
     * @param orderBy the last date to order on: the run's date less the lead days; null for nobody
     * @param cost sum of the lines that have a price
     */
    public record Stop(
            @Nullable String supplier,
            String name,
            @Nullable LocalDate orderBy,
            List<Line> lines,
            Mass mass,
            Money cost) {
        public Stop {
            lines = List.copyOf(lines);
        }
    }

    /** @param cost null when there is no price */
    public record Line(
            String material, int packs, Mass mass, @Nullable Money cost) {}

    /**
     * One material through the season.
     *
     * @param days dates on which something happens, ascending
     * @param left good packs when the last work of the plan is done
     * @param goneOff packs that have gone off by then
     */
    public record StockStory(String material, List<StockDay> days, int left, int goneOff) {
        public StockStory {
            days = List.copyOf(days);
        }

        /** Packs that lie there in the evening, good or gone off. */
        public long lyingOn(LocalDate evening) {
            return days.stream()
                    .filter(day -> !day.date().isAfter(evening))
                    .mapToLong(day -> day.arrived() - day.used())
                    .sum();
        }
    }

    /** Packs on one date; {@code onSite} are the good ones in the evening. */
    public record StockDay(LocalDate date, int arrived, int used, int goneOff, int onSite) {}

    /** Packs that have gone off still take their room, as the planner counts it. */
    public record DryRoom(LocalDate date, Volume used, Volume limit) {}
}
