package org.firmset.homestead.file;

import java.math.BigDecimal;
import java.time.Month;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.stream.Stream;
import org.firmset.homestead.DeliveryTerms;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Material;
import org.firmset.homestead.Supplier;
import org.firmset.measure.Cash;
import org.firmset.measure.Hours;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** A delivery can come: on some weekday, by a track that bears its truck, and with what no vehicle of one's own takes. */
final class DeliveryRules {
    private static final Length NO_LENGTH = Length.ofMetres(0);

    private final Homestead homestead;
    private final @Nullable Mass trackLimit;
    private final List<Fault> faults = new ArrayList<>();

    private DeliveryRules(Homestead homestead) {
        this.homestead = homestead;
        trackLimit = homestead.place().trackLimit();
    }

    static List<Fault> faults(Homestead homestead) {
        DeliveryRules rules = new DeliveryRules(homestead);
        rules.someMonthIsFirm();
        for (int i = 0; i < homestead.suppliers().size(); i++) {
            Supplier supplier = homestead.suppliers().get(i);
            @Nullable DeliveryTerms terms = supplier.delivery();
            if (terms != null) {
                rules.check(supplier, terms, "/suppliers/" + i + "/delivery/");
            }
        }
        return rules.faults;
    }

    private void someMonthIsFirm() {
        List<Month> soft = homestead.place().softMonths();
        if (new HashSet<>(soft).size() == Month.values().length) {
            faults.add(new Fault(
                    "/place/softMonths",
                    "all twelve",
                    "leaves no month in which a truck could come",
                    "Take out the months in which the track bears one, or take the delivery out at the suppliers"));
        }
    }

    private void check(Supplier supplier, DeliveryTerms terms, String pointer) {
        if (terms.weekdays().isEmpty()) {
            faults.add(new Fault(pointer + "weekdays", "", "names no weekday", "Write at least one, such as saturday"));
        }
        smallOrdersAreWhole(terms, pointer);
        readyMixIsMet(supplier, terms, pointer);
        @Nullable Mass empty = terms.truckEmptyMass();
        if (empty != null && trackLimit != null && room(terms).signum() <= 0) {
            faults.add(new Fault(
                    pointer + "truckEmptyMass",
                    empty.toString(),
                    "is not under the limit of the track, " + trackLimit,
                    "Ask for a smaller truck, look at /place/trackLimit again, or take the delivery out"));
        } else {
            packsFit(supplier, terms, pointer);
        }
    }

    private void smallOrdersAreWhole(DeliveryTerms terms, String pointer) {
        @Nullable Money least = terms.leastOrder();
        @Nullable Money fee = terms.smallOrderFee();
        if (least != null && fee == null) {
            faults.add(new Fault(
                    pointer + "leastOrder",
                    Cash.text(least),
                    "says nothing of what a smaller order costs",
                    "Write smallOrderFee as well, 0 when there is none, or leave both out"));
        }
        if (least == null && fee != null) {
            faults.add(new Fault(
                    pointer + "smallOrderFee",
                    Cash.text(fee),
                    "says nothing of which order is a small one",
                    "Write leastOrder as well, or leave both out"));
        }
    }

    private void readyMixIsMet(Supplier supplier, DeliveryTerms terms, String pointer) {
        @Nullable Hours within = terms.placeWithin();
        if (within == null) {
            return;
        }
        if (!terms.attended()) {
            faults.add(new Fault(
                    pointer + "attended",
                    "false",
                    "leaves ready-mix with nobody there to place it",
                    "Write true, or leave placeWithin out"));
        }
        sold(supplier)
                .filter(m -> m.shelfLifeDays() == null || m.shelfLifeDays() > 0)
                .findFirst()
                .ifPresent(m -> faults.add(new Fault(
                        pointer + "placeWithin",
                        within.toString(),
                        "is for what is used on the day it comes, but '" + m.key() + "' keeps longer",
                        "Write 0 as the shelf life of '" + m.key() + "', or sell it under another supplier")));
    }

    private Stream<Material> sold(Supplier supplier) {
        return homestead.materials().stream()
                .filter(m ->
                        supplier.prices().stream().anyMatch(p -> p.material().equals(m.key())));
    }

    /** In kilograms. */
    private BigDecimal room(DeliveryTerms terms) {
        BigDecimal most = terms.largestMass().value();
        return trackLimit == null || terms.truckEmptyMass() == null
                ? most
                : most.min(trackLimit.value().subtract(terms.truckEmptyMass().value()));
    }

    /** Of what it sells the heaviest pack that neither this truck nor anybody else brings. */
    private void packsFit(Supplier supplier, DeliveryTerms terms, String pointer) {
        sold(supplier)
                .filter(m -> m.mass().value().compareTo(room(terms)) > 0)
                .filter(m -> !fitsVehicle(m) && !fitsOtherTruck(m))
                .max((a, b) -> a.mass().value().compareTo(b.mass().value()))
                .ifPresent(m -> faults.add(new Fault(
                        pointer + "largestMass",
                        terms.largestMass().toString(),
                        "leaves room for no pack of '" + m.key() + "', " + m.mass() + ", which fits no vehicle either",
                        "Ask for a larger truck, or write a smaller pack"
                                + (trackLimit == null ? "" : "; the track bears " + trackLimit))));
    }

    private boolean fitsOtherTruck(Material material) {
        return homestead.suppliers().stream()
                .filter(s -> sold(s).anyMatch(material::equals))
                .flatMap(s -> Stream.ofNullable(s.delivery()))
                .anyMatch(t -> material.mass().value().compareTo(room(t)) <= 0);
    }

    private boolean fitsVehicle(Material material) {
        return CargoPlace.of(homestead).stream().anyMatch(p -> p.hasRoomFor(material) && p.bears(material));
    }
}
