package org.firmset.season.load;

import java.time.LocalDate;
import java.util.List;
import org.firmset.measure.Volume;
import org.firmset.season.result.SeasonReport;
import org.firmset.trade.haul.Cargo;
import org.firmset.trade.haul.Outfit;
import org.firmset.trade.haul.Placement;
import org.firmset.trade.haul.Restraint;
import org.firmset.trade.haul.Stowed;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * What a trip of a plan carries, by what, and where each pack lies. Get one from {@link TripLoadsWriter}; {@link LoadWords}
 * puts it into words.
 *
 * @param number among the trips that are made, from 1
 * @param own runs with the trip's own vehicle, in order
 * @param brought deliveries, in order
 * @param stock one for each material that is on site before, during or after the trip
 * @param dryRoom null when there is none
 * @param water what its work takes and where it comes from, in words; empty without
 */
public record TripLoads(
        String trip,
        int number,
        LocalDate firstDate,
        LocalDate lastDate,
        List<OwnRun> own,
        List<BroughtRun> brought,
        Fewest fewest,
        List<Stock> stock,
        @Nullable DryRoom dryRoom,
        List<String> water) {
    public TripLoads {
        own = List.copyOf(own);
        brought = List.copyOf(brought);
        stock = List.copyOf(stock);
        water = List.copyOf(water);
    }

    /**
     * A run with the trip's own vehicle.
     *
     * @param outfit with the people of the day on which most mass of them is there
     * @param items what comes off first is first
     */
    public record OwnRun(
            SeasonReport.RunPart about,
            Outfit outfit,
            Placement placement,
            List<Item> items,
            SeasonSupplies.RunList shopping) {
        public OwnRun {
            items = List.copyOf(items);
        }
    }

    /**
     * Packs of a material in one bay.
     *
     * @param off its place in the order of unloading, from 1
     * @param pack what a pack is
     * @param places where they lie, from the front
     * @param use the first work of the plan that uses one of them; null when none does
     */
    public record Item(
            int off,
            Cargo cargo,
            String pack,
            List<Stowed> places,
            Restraint restraint,
            @Nullable Use use) {
        public Item {
            places = List.copyOf(places);
        }
    }

    /** @param stage its name */
    public record Use(String stage, LocalDate date) {}

    /**
     * A delivery.
     *
     * @param supplier key
     * @param broughtOn before the run's date when it is dropped with nobody there
     * @param fees with that for a small order; the goods are paid besides
     */
    public record BroughtRun(
            SeasonReport.RunPart about,
            String supplier,
            LocalDate broughtOn,
            Money fees,
            SeasonSupplies.RunList shopping) {}

    /**
     * Whether fewer runs of one's own would do.
     *
     * @param planned runs of the plan
     * @param found the fewest a search found for the same packs, by mass, room and length alone
     * @param least no way of loading needs fewer
     */
    public record Fewest(int planned, int found, int least) {}

    /**
     * Good packs of a material on site.
     *
     * @param before on the evening before the trip
     * @param goneOff packs that went off during the trip
     * @param after on its last evening
     * @param next the first work after the trip that uses some; null when none does
     */
    public record Stock(
            String material,
            String name,
            String pack,
            int before,
            int arrived,
            int used,
            int goneOff,
            int after,
            @Nullable Use next) {}

    /** How full the dry room is: before the trip, on the evening it is fullest, and after it. */
    public record DryRoom(Volume before, Volume most, Volume after, Volume limit) {}
}
