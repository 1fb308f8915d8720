package org.firmset.season.problem;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Material;
import org.firmset.homestead.MonthNormal;
import org.firmset.homestead.Stage;
import org.firmset.homestead.WaterStore;
import org.firmset.measure.Area;
import org.firmset.measure.Mass;
import org.firmset.measure.Measured;
import org.firmset.measure.Volume;
import org.firmset.plan.Need;
import org.firmset.plan.StockLot;
import org.firmset.season.words.WaterMeasure;
import org.jspecify.annotations.Nullable;

/**
 * Writes water as one more material of the planner, whose packs are cans. Sums are rounded so that water is rather short on
 * paper than on site: stages take whole cans each, the tank and the rain count in whole cans, and rain counts only as far as
 * there is room in the tank with nothing taken out of it.
 */
public final class WaterWriter {
    /** The planner's name for a can of water; no key that people write has a full stop. */
    public static final String ID = "water.can";

    /** A can takes a little more room than what is in it; common practice, no source. */
    private static final BigDecimal ROOM = new BigDecimal("1.1");

    private static final int KILOGRAMS_PER_CUBIC_METRE = 1000;

    private final WaterStore store;
    private final Homestead homestead;
    private final long canMillilitres;

    private WaterWriter(Homestead homestead, WaterStore store) {
        this.homestead = homestead;
        this.store = store;
        canMillilitres = millilitres(store.can());
    }

    /** Empty when no stage takes water, or when the homestead does not say what water there is: then none is reckoned with. */
    static Optional<WaterWriter> of(Homestead homestead) {
        @Nullable WaterStore store = homestead.water();
        return store == null || homestead.stages().stream().noneMatch(WaterWriter::takesWater)
                ? Optional.empty()
                : Optional.of(new WaterWriter(homestead, store));
    }

    static boolean takesWater(Stage stage) {
        return stage.water() != null && stage.water().value().signum() > 0;
    }

    /** The homestead's materials, and water by the can where it is reckoned with: all that a plan can carry. */
    public static List<Material> materials(Homestead homestead) {
        List<Material> all = new ArrayList<>(homestead.materials());
        of(homestead).ifPresent(water -> all.add(water.can()));
        return all;
    }

    private Material can() {
        BigDecimal kilograms = store.can()
                .value()
                .multiply(BigDecimal.valueOf(KILOGRAMS_PER_CUBIC_METRE))
                .add(store.canMass().value());
        return new Material(
                ID,
                "Water, %s each".formatted(WaterMeasure.show(store.can(), homestead.units())),
                "can",
                new Mass(kilograms),
                new Volume(store.can().value().multiply(ROOM)),
                null,
                false,
                true,
                null);
    }

    /** Cans that a stage still takes: its litres by the labour that is left, rounded up. */
    Optional<Need> need(Stage stage, int quartersLeft) {
        @Nullable Volume water = stage.water();
        if (water == null || quartersLeft == 0) {
            return Optional.empty();
        }
        BigDecimal left = BigDecimal.valueOf(millilitres(water))
                .multiply(BigDecimal.valueOf(quartersLeft))
                .divide(BigDecimal.valueOf(stage.labour().quarters()), 0, RoundingMode.CEILING);
        int cans = Math.toIntExact(Math.ceilDiv(left.longValueExact(), canMillilitres));
        return cans == 0 ? Optional.empty() : Optional.of(new Need(ID, cans));
    }

    /**
     * Cans in the tank on the eve of the status date, and what rain adds to them by the first date of each possible trip. The
     * latest come first, so that a search that takes the lots in their order leaves the early ones for early work.
     *
     * @param tripDates first dates of the possible trips, ascending
     */
    List<StockLot> stock(LocalDate statusDate, List<LocalDate> tripDates) {
        List<StockLot> lots = new ArrayList<>();
        int counted = cans(millilitres(store.now()));
        add(lots, counted, statusDate.minusDays(1));
        double caught = 0;
        LocalDate day = statusDate;
        for (LocalDate date : tripDates) {
            for (; day.isBefore(date); day = day.plusDays(1)) {
                caught += caught(day);
            }
            int by = cans(level(caught));
            add(lots, by - counted, date);
            counted = by;
        }
        return lots;
    }

    private static void add(List<StockLot> lots, int cans, LocalDate date) {
        if (cans > 0) {
            lots.addFirst(new StockLot(ID, cans, date));
        }
    }

    private int cans(long millilitres) {
        return Math.toIntExact(millilitres / canMillilitres);
    }

    /** What the tank holds after so much rain when nothing is taken out of it, in millilitres. */
    private long level(double caught) {
        return Math.min(millilitres(store.tank()), millilitres(store.now()) + (long) Math.floor(caught));
    }

    /** Rain of a usual day on the roof that arrives in the tank, in millilitres; none in a month that is freezing in mean. */
    private double caught(LocalDate date) {
        List<MonthNormal> climate = homestead.place().climate();
        @Nullable Area roof = store.roof();
        if (climate.isEmpty() || roof == null) {
            return 0;
        }
        MonthNormal month = climate.get(date.getMonthValue() - 1);
        double mean = month.meanHigh().value().add(month.meanLow().value()).doubleValue() / 2;
        if (month.rain() == null || mean <= 0) {
            return 0;
        }
        double cubicMetres = value(month.rain()) / YearMonth.from(date).lengthOfMonth() * value(roof);
        return cubicMetres * 1e6 * store.catchPercent() / 100;
    }

    private static double value(Measured measured) {
        return Objects.requireNonNull(measured).value().doubleValue();
    }

    /** What is in so many cans. */
    public static Volume litres(WaterStore store, int cans) {
        return new Volume(store.can().value().multiply(BigDecimal.valueOf(cans)));
    }

    private static long millilitres(Volume volume) {
        return ProblemWriter.millilitres(volume);
    }
}
