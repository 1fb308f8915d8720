package org.firmset.homestead.store;

import java.math.BigDecimal;
import java.util.List;
import org.firmset.homestead.Conditions;
import org.firmset.homestead.DeliveryTerms;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Material;
import org.firmset.homestead.OpenDates;
import org.firmset.homestead.Place;
import org.firmset.homestead.Stage;
import org.firmset.homestead.StageLayout;
import org.firmset.homestead.Storage;
import org.firmset.homestead.Subproject;
import org.firmset.homestead.Supplier;
import org.firmset.homestead.Tool;
import org.firmset.homestead.Travel;
import org.firmset.homestead.Vehicle;
import org.firmset.homestead.Wait;
import org.firmset.homestead.WaitKind;
import org.firmset.measure.Cash;
import org.firmset.measure.Hours;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Volume;
import org.javamoney.moneta.Money;

/** A homestead that leaves out all it may. Its keys are those of {@link RichHomestead}, so one can become the other. */
final class PlainHomestead {
    private static final Money NOTHING = Cash.ofCents(0, "CHF");
    private static final Mass MASSLESS = Mass.ofKilograms(0);
    private static final Volume NO_ROOM = Volume.ofCubicMetres(0);
    private static final Length NO_LENGTH = Length.ofMetres(0);

    private PlainHomestead() {}

    static Homestead make() {
        return new Homestead(
                "Plain",
                UnitSystem.METRIC,
                "CHF",
                new Place(BigDecimal.ZERO, BigDecimal.ZERO, "UTC", List.of(), null, List.of(), List.of(), List.of()),
                new Travel(NO_LENGTH, Hours.NONE, Hours.NONE, NOTHING, NOTHING, "truck", null, 0, Hours.NONE, NOTHING),
                new OpenDates(List.of(), List.of(), List.of(), null),
                List.of(),
                List.of(new Subproject("water", "Water", NOTHING, 1, null)),
                List.of(stage("roof"), stage("footings")),
                List.of(new Wait("wait-0", "Wait", WaitKind.FOLLOWS, "roof", "footings", 0, null, null)),
                List.of(new Material("cement", "Cement", "bag", MASSLESS, NO_ROOM, null, false, false, null)),
                List.of(
                        new Supplier("yard", "Yard", 0, List.of(), null),
                        new Supplier(
                                "mill",
                                "Mill",
                                0,
                                List.of(),
                                new DeliveryTerms(NOTHING, MASSLESS, 0, List.of(), null, null, null, false, null))),
                List.of(new Tool("mixer", "Mixer", 1, null, false, 100, null, null)),
                List.of(new Vehicle(
                        "truck", "Truck", MASSLESS, MASSLESS, MASSLESS, NO_ROOM, NO_LENGTH, null, null, null, null,
                        null)),
                List.of(),
                null,
                null,
                null,
                new Storage(NO_ROOM),
                List.of(),
                List.of(),
                List.of(),
                null);
    }

    private static Stage stage(String key) {
        // the roof has conditions that demand nothing, the footings have none: these must not become the same
        Conditions conditions = key.equals("roof") ? new Conditions(null, null, false, null, null, false, null) : null;
        return new Stage(
                key,
                "Stage",
                "water",
                new Hours(1),
                1,
                StageLayout.SPLITTABLE,
                null,
                null,
                null,
                List.of(),
                null,
                null,
                null,
                conditions,
                List.of(),
                List.of(),
                null,
                null,
                List.of(),
                false,
                null);
    }
}
