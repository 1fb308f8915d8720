package org.firmset.season;

import java.math.BigDecimal;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Stage;
import org.firmset.homestead.WaterStore;
import org.firmset.homestead.part.Part;
import org.firmset.measure.Area;
import org.firmset.measure.Mass;
import org.firmset.measure.Volume;
import org.jspecify.annotations.Nullable;

/**
 * Tank, roof and water of the stages made by chance, for one homestead in five. Their dice are their own, so that a homestead
 * is otherwise what its seed always made it.
 */
final class RandomWater {
    private RandomWater() {}

    static Homestead added(Homestead homestead, long seed) {
        Dice dice = new Dice(seed ^ 0x3A7E4L);
        return dice.chance(20)
                ? with(
                        homestead.withStages(homestead.stages().stream()
                                .map(s -> dice.chance(40) ? thirsty(s, dice) : s)
                                .toList()),
                        "water",
                        dice.chance(90) ? store(dice) : null)
                : homestead;
    }

    private static WaterStore store(Dice dice) {
        int tank = dice.between(0, 2000);
        return new WaterStore(
                litres(tank),
                litres(dice.between(0, tank)),
                dice.chance(60) ? Area.ofSquareMetres(dice.between(0, 60)) : null,
                dice.between(0, 100),
                litres(dice.between(1, 30)),
                Mass.ofKilograms(dice.between(0, 2)));
    }

    private static Stage thirsty(Stage stage, Dice dice) {
        return with(stage, "water", litres(dice.between(0, 400)));
    }

    private static Volume litres(int litres) {
        return new Volume(BigDecimal.valueOf(litres, 3));
    }

    @SuppressWarnings("unchecked")
    private static <T extends Record> T with(T record, String changed, @Nullable Object value) {
        return (T) Part.record(
                record.getClass(),
                Part.of(record.getClass()).stream()
                        .<@Nullable Object>map(p -> p.name().equals(changed) ? value : p.valueIn(record))
                        .toList());
    }
}
