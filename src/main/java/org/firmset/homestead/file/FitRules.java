package org.firmset.homestead.file;

import java.util.List;
import java.util.Objects;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Material;
import org.firmset.homestead.Stage;
import org.firmset.homestead.StockLot;
import org.firmset.homestead.Supplier;
import org.firmset.measure.Length;
import org.firmset.measure.Measured;
import org.jspecify.annotations.Nullable;

/** Whatever a stage still needs fits into some bay of what is driven, or a supplier brings it, or it lies there. */
final class FitRules {
    private FitRules() {}

    static void check(Homestead homestead, List<Fault> faults) {
        List<CargoPlace> places = CargoPlace.of(homestead);
        for (int i = 0; i < homestead.materials().size() && !places.isEmpty(); i++) {
            Material material = homestead.materials().get(i);
            if (places.stream().noneMatch(p -> p.hasRoomFor(material))
                    && isMissing(homestead, material)
                    && homestead.suppliers().stream().noneMatch(s -> brings(s, material))) {
                faults.add(fault(material, places, "/materials/" + i));
            }
        }
    }

    private static Fault fault(Material material, List<CargoPlace> places, String pointer) {
        @Nullable Length longest = material.longest();
        boolean isLong = longest != null && places.stream().noneMatch(p -> p.takesLength(longest));
        Measured value = isLong ? Objects.requireNonNull(longest) : material.volume();
        return new Fault(
                pointer + (isLong ? "/longest" : "/volume"),
                value.toString(),
                "makes '" + material.name() + "' " + (isLong ? "too long" : "too big") + " for every bay ("
                        + String.join(
                                ", ", places.stream().map(CargoPlace::name).toList())
                        + "), and no supplier that has it delivers",
                "Let a supplier deliver it, have it cut or packed smaller, or write down the bay that takes it");
    }

    private static boolean isMissing(Homestead homestead, Material material) {
        long needed = homestead.stages().stream()
                .filter(FitRules::isToDo)
                .flatMap(s -> s.needs().stream())
                .filter(n -> n.material().equals(material.key()))
                .mapToLong(n -> n.packs())
                .sum();
        long there = homestead.stock().stream()
                .filter(l -> l.material().equals(material.key()))
                .mapToLong(StockLot::packs)
                .sum();
        return needed > there;
    }

    private static boolean isToDo(Stage stage) {
        var progress = stage.progress();
        return progress == null || progress.finishedOn() == null;
    }

    private static boolean brings(Supplier supplier, Material material) {
        var terms = supplier.delivery();
        return terms != null
                && supplier.prices().stream().anyMatch(p -> p.material().equals(material.key()));
    }
}
