package org.firmset.plan.search;

import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Material;
import org.firmset.plan.Obstacle;
import org.firmset.plan.Rule;

/** Finds materials that stages need, that are not on site and that nobody can ever bring: a proof that there is no plan. */
final class MissingGoods {
    private final Model model;

    MissingGoods(Model model) {
        this.model = model;
    }

    List<Obstacle> find() {
        List<Obstacle> found = new ArrayList<>();
        for (int m = 0; m < model.problem.materials().size(); m++) {
            int material = m;
            List<Integer> users = IntStream.range(0, model.stageCount)
                    .filter(s -> !model.stage(s).finished())
                    .filter(s -> IntStream.of(model.needMaterial[s]).anyMatch(x -> x == material))
                    .boxed()
                    .toList();
            long needed = users.stream()
                    .flatMap(s -> model.stage(s).needs().stream())
                    .filter(n -> n.material().equals(model.material(material).id()))
                    .mapToLong(n -> n.packs())
                    .sum();
            if (needed > onSite(material) && !canCome(material)) {
                found.add(cannotCome(material, users));
            }
        }
        return found;
    }

    private long onSite(int m) {
        return model.problem.site().stock().stream()
                .filter(l -> l.material().equals(model.material(m).id()))
                .mapToLong(l -> l.packs())
                .sum();
    }

    private boolean canCome(int m) {
        Supply supply = new Ledger(model).supply;
        for (int source = supply.lotCount(); source < supply.sourceEnd(); source++) {
            int bays = supply.isDelivery(source) ? 1 : supply.baysOf(source).length;
            for (int bay = 0; bay < bays; bay++) {
                if (supply.carries(source, bay, m) > 0) {
                    return true;
                }
            }
        }
        return false;
    }

    private Obstacle cannotCome(int m, List<Integer> users) {
        Material material = model.material(m);
        return Obstacles.proven(
                model,
                Rule.RUNS,
                users,
                "%s (%,.0f kg, %.2f m3, %.1f m long) goes into no vehicle on any trip, and no supplier"
                        + " can bring it on an open date.%s Have it delivered, or use a smaller pack.",
                material.name(),
                material.grams() / 1000.0,
                material.millilitres() / 1e6,
                material.longestMillimetres() / 1000.0,
                whyNoTruck(material));
    }

    /** What keeps those away who sell it. */
    private String whyNoTruck(Material material) {
        StringBuilder why = new StringBuilder();
        for (DeliveryOffer offer : model.problem.offers()) {
            if (offer.materials().contains(material.id())) {
                if (offer.grams() < material.grams()) {
                    why.append(" A truck of ")
                            .append(offer.name())
                            .append(" may bring only ")
                            .append(String.format(Locale.ROOT, "%,.0f kg.", offer.grams() / 1000.0));
                }
                if (!offer.shutMonths().isEmpty()) {
                    why.append(" No truck of ")
                            .append(offer.name())
                            .append(" may come in ")
                            .append(offer.shutMonths().stream()
                                    .sorted()
                                    .map(m -> m.getDisplayName(TextStyle.FULL, Locale.ENGLISH))
                                    .collect(Collectors.joining(", ")))
                            .append('.');
                }
                if (material.dry() && !offer.attended()) {
                    why.append(" It must be kept dry, so somebody must be there to take it.");
                }
            }
        }
        return why.toString();
    }
}
