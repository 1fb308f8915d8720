package org.firmset.homestead.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Material;
import org.firmset.homestead.Need;
import org.firmset.homestead.Stage;
import org.firmset.homestead.Supply;
import org.firmset.homestead.Takeoff;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Measured;
import org.firmset.measure.Volume;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Whole;
import org.firmset.trade.trace.Worksheet;
import org.jspecify.annotations.Nullable;

/** What stages need when their takeoffs are worked out: exact sums first, rounded up to whole packs once. */
public final class Needs {
    private Needs() {}

    /** What a takeoff adds to the need of a material, not yet rounded. */
    public record Part(Takeoff takeoff, String line, String material, double packs) {}

    /** The homestead with the needs of its takeoffs added to those that are written at its stages. */
    public static Homestead reckoned(Homestead homestead) {
        if (homestead.takeoffs().isEmpty()) {
            return homestead;
        }
        Map<String, List<Part>> byStage = parts(homestead).stream()
                .filter(p -> p.takeoff().stage() != null)
                .collect(Collectors.groupingBy(p -> String.valueOf(p.takeoff().stage())));
        return homestead.withStages(homestead.stages().stream()
                .map(s -> reckoned(s, byStage.getOrDefault(s.key(), List.of())))
                .toList());
    }

    /** Everything that takeoffs supply, of those that can be worked out. */
    public static List<Part> parts(Homestead homestead) {
        Map<String, Material> materials =
                homestead.materials().stream().collect(Collectors.toMap(Material::key, Function.identity()));
        List<Part> parts = new ArrayList<>();
        for (Takeoff takeoff : homestead.takeoffs()) {
            worksheet(takeoff).ifPresent(worksheet -> {
                for (Supply supply : takeoff.supplies()) {
                    @Nullable Material material = materials.get(supply.material());
                    Optional<Line> line = worksheet.line(supply.line());
                    if (material != null && line.isPresent()) {
                        packs(line.get().amount(), material)
                                .ifPresent(p -> parts.add(new Part(takeoff, supply.line(), supply.material(), p)));
                    }
                }
            });
        }
        return parts;
    }

    /** Empty when its kind is not known or its inputs are refused. */
    public static Optional<Worksheet> worksheet(Takeoff takeoff) {
        return Catalogue.find(takeoff.kind())
                .map(kind -> Inputs.work(kind, Inputs.texts(takeoff.given())))
                .flatMap(worked -> switch (worked) {
                    case Worked.Done done -> Optional.of(done.worksheet());
                    case Worked.Refused refused -> Optional.empty();
                });
    }

    private static Stage reckoned(Stage stage, List<Part> parts) {
        if (parts.isEmpty()) {
            return stage;
        }
        Map<String, Double> packs = new LinkedHashMap<>();
        stage.needs().forEach(n -> packs.merge(n.material(), (double) n.packs(), Double::sum));
        parts.forEach(p -> packs.merge(p.material(), p.packs(), Double::sum));
        List<Need> needs = new ArrayList<>();
        packs.forEach((material, exact) -> {
            long whole = Whole.up(exact);
            if (whole > 0) {
                needs.add(new Need(material, (int) Math.min(whole, Integer.MAX_VALUE)));
            }
        });
        return stage.withNeeds(needs);
    }

    /**
     * How many packs of a material an amount is: by number, or by the volume, mass or length of a pack. Empty when that
     * cannot be said of this material.
     */
    public static OptionalDouble packs(Amount amount, Material material) {
        return switch (amount) {
            case Amount.Packs packs -> OptionalDouble.of(packs.exact());
            case Amount.Count count -> OptionalDouble.of(count.number());
            case Amount.Quantity quantity ->
                switch (quantity.measured()) {
                    case Volume volume -> shared(volume, material.volume());
                    case Mass mass -> shared(mass, material.mass());
                    case Length length -> shared(length, material.longest());
                    default -> OptionalDouble.empty();
                };
            case Amount.Number number -> OptionalDouble.empty();
            case Amount.Both both -> OptionalDouble.empty();
            case Amount.On on -> OptionalDouble.empty();
            case Amount.Word word -> OptionalDouble.empty();
        };
    }

    private static OptionalDouble shared(Measured amount, @Nullable Measured pack) {
        return pack == null || pack.value().signum() <= 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(amount.amount() / pack.amount());
    }
}
