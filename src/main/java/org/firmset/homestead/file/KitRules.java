package org.firmset.homestead.file;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Trailer;
import org.firmset.homestead.Vehicle;

/** Vehicles and trailers can carry at least themselves and take what is needed. */
final class KitRules {
    private KitRules() {}

    static List<Fault> faults(Homestead homestead) {
        List<Fault> faults = new ArrayList<>();
        for (int i = 0; i < homestead.vehicles().size(); i++) {
            Vehicle vehicle = homestead.vehicles().get(i);
            boolean tows = homestead.travel().trailer() != null
                    && vehicle.key().equals(homestead.travel().vehicle());
            check(vehicle, "/vehicles/" + i, faults);
            AxleRules.check(vehicle, tows, "/vehicles/" + i, faults);
        }
        for (int i = 0; i < homestead.trailers().size(); i++) {
            check(homestead.trailers().get(i), "/trailers/" + i, faults);
            AxleRules.check(homestead.trailers().get(i), "/trailers/" + i, faults);
        }
        checkTow(homestead, faults);
        FitRules.check(homestead, faults);
        return faults;
    }

    private static void check(Vehicle vehicle, String pointer, List<Fault> faults) {
        BigDecimal ready = vehicle.emptyMass().value().add(vehicle.standingKit().value());
        if (ready.compareTo(vehicle.grossRating().value()) >= 0) {
            faults.add(new Fault(
                    pointer + "/emptyMass",
                    vehicle.emptyMass().toString(),
                    "with the standing kit " + vehicle.standingKit() + " is not under the gross rating "
                            + vehicle.grossRating(),
                    "Weigh the vehicle, or read its rating again"));
        }
    }

    private static void check(Trailer trailer, String pointer, List<Fault> faults) {
        if (trailer.emptyMass().value().compareTo(trailer.grossRating().value()) >= 0) {
            faults.add(new Fault(
                    pointer + "/emptyMass",
                    trailer.emptyMass().toString(),
                    "is not under the gross rating " + trailer.grossRating(),
                    "Weigh the trailer, or read its rating again"));
        }
    }

    private static void checkTow(Homestead homestead, List<Fault> faults) {
        Optional<Vehicle> vehicle = homestead.driven();
        Optional<Trailer> trailer = homestead.towed();
        if (vehicle.isEmpty() || trailer.isEmpty()) {
            return;
        }
        boolean tows = vehicle.get().towRating() != null
                && vehicle.get()
                                .towRating()
                                .value()
                                .compareTo(trailer.get().emptyMass().value())
                        > 0;
        if (!tows) {
            faults.add(new Fault(
                    "/travel/trailer",
                    trailer.get().key(),
                    "is heavier than the vehicle '" + vehicle.get().key() + "' may tow",
                    "Write its tow rating at the vehicle, or leave the trailer at home"));
        }
    }
}
