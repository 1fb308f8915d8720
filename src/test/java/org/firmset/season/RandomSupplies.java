package org.firmset.season;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.firmset.homestead.DeliveryTerms;
import org.firmset.homestead.Material;
import org.firmset.homestead.Price;
import org.firmset.homestead.StockLot;
import org.firmset.homestead.Supplier;
import org.firmset.homestead.Trailer;
import org.firmset.homestead.Vehicle;
import org.firmset.measure.Cash;
import org.firmset.measure.Hours;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Measured;
import org.firmset.measure.Volume;
import org.jspecify.annotations.Nullable;

/** Materials, who sells them and what is on site already, made by chance. */
record RandomSupplies(List<Material> materials, List<Supplier> suppliers, List<StockLot> stock) {
    static RandomSupplies of(Dice dice, Size size, LocalDate statusDate) {
        List<Material> materials = IntStream.rangeClosed(1, dice.between(0, size.mostMaterials()))
                .mapToObj(i -> material(dice, i))
                .toList();
        if (materials.isEmpty()) {
            return new RandomSupplies(materials, List.of(), List.of());
        }
        List<Supplier> suppliers = IntStream.rangeClosed(1, dice.between(1, 3))
                .mapToObj(i -> supplier(dice, i, materials, statusDate))
                .toList();
        List<StockLot> stock = IntStream.range(0, dice.chance(40) ? dice.between(1, 3) : 0)
                .mapToObj(i -> new StockLot(
                        dice.one(materials).key(), dice.between(1, 40), statusDate.minusDays(dice.between(0, 90))))
                .toList();
        return new RandomSupplies(materials, suppliers, stock);
    }

    /** What fits into no bay and is delivered by nobody is cut down to the largest bay. */
    RandomSupplies fitting(RandomKit kit) {
        Stream<Volume> volumes = Stream.concat(
                kit.vehicles().stream().map(Vehicle::bayVolume),
                kit.trailers().stream().map(Trailer::deckVolume));
        double most = volumes.mapToDouble(Measured::amount).min().orElse(0);
        Stream<Length> lengths = Stream.concat(
                kit.vehicles().stream().map(Vehicle::longestPiece),
                kit.trailers().stream().map(Trailer::longestPiece));
        double longest = lengths.mapToDouble(Measured::amount).max().orElse(0);
        List<Material> cut = materials.stream()
                .map(m -> isDelivered(m) ? m : cut(m, longest, most))
                .toList();
        return new RandomSupplies(cut, suppliers, stock);
    }

    private boolean isDelivered(Material material) {
        return suppliers.stream()
                .filter(s -> brings(s.delivery(), material))
                .anyMatch(s -> s.prices().stream().anyMatch(p -> p.material().equals(material.key())));
    }

    private static boolean brings(@Nullable DeliveryTerms terms, Material material) {
        return terms != null && terms.largestMass().amount() >= material.mass().amount();
    }

    private static Material cut(Material m, double longest, double most) {
        return new Material(
                m.key(),
                m.name(),
                m.pack(),
                m.mass(),
                Volume.ofCubicMetres(Math.min(m.volume().amount(), most)),
                m.longest() == null
                        ? null
                        : Length.ofMetres(Math.min(m.longest().amount(), longest)),
                m.dry(),
                m.upright(),
                m.shelfLifeDays());
    }

    private static Material material(Dice dice, int number) {
        boolean heavy = dice.chance(4);
        return new Material(
                "material-" + number,
                "Material " + number,
                dice.one(List.of("bag", "bar", "roll")),
                Mass.ofKilograms(heavy ? dice.between(300, 2500) : dice.between(0, 60)),
                Volume.ofCubicMetres(heavy ? dice.between(100, 2000) / 1000.0 : dice.between(0, 150) / 1000.0),
                dice.chance(50) ? Length.ofMetres(dice.between(3, dice.chance(10) ? 65 : 18) / 10.0) : null,
                dice.chance(30),
                number % 3 == 0,
                dice.chance(25) ? dice.between(0, 150) : null);
    }

    private static Supplier supplier(Dice dice, int number, List<Material> materials, LocalDate statusDate) {
        List<Material> sold = dice.some(materials, materials.size());
        List<Price> prices = sold.stream()
                .map(m -> new Price(
                        m.key(),
                        Cash.ofCents(dice.between(0, 30_000), RandomHomestead.CURRENCY),
                        statusDate.minusDays(dice.between(0, 300))))
                .toList();
        return new Supplier(
                "supplier-" + number,
                "Supplier " + number,
                dice.chance(60) ? 0 : dice.between(1, 28),
                prices,
                delivery(dice, sold));
    }

    /** A truck of its own for everything it sells, some of them too heavy for soft ground. */
    private static @Nullable DeliveryTerms delivery(Dice dice, List<Material> sold) {
        if (!dice.chance(50)) {
            return null;
        }
        double heaviest = sold.stream()
                .mapToDouble(m -> m.mass().value().doubleValue())
                .max()
                .orElse(0);
        boolean small = dice.chance(40);
        boolean sameDay = sold.stream().allMatch(m -> m.shelfLifeDays() != null && m.shelfLifeDays() == 0);
        boolean attended = sameDay || dice.chance(65);
        return new DeliveryTerms(
                Cash.ofCents(dice.between(0, 20_000), RandomHomestead.CURRENCY),
                Mass.ofKilograms(Math.max(heaviest, dice.between(200, 6000))),
                dice.between(0, 30),
                dice.some(List.of(DayOfWeek.values()), 7),
                small ? Cash.ofCents(dice.between(0, 100_000), RandomHomestead.CURRENCY) : null,
                small ? Cash.ofCents(dice.between(0, 10_000), RandomHomestead.CURRENCY) : null,
                dice.chance(50) ? Mass.ofKilograms(dice.between(2000, 12_000)) : null,
                attended,
                sameDay ? new Hours(dice.between(1, 12)) : null);
    }
}
