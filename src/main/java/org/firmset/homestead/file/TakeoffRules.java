package org.firmset.homestead.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Material;
import org.firmset.homestead.Supply;
import org.firmset.homestead.Takeoff;
import org.firmset.homestead.takeoff.Catalogue;
import org.firmset.homestead.takeoff.InputFault;
import org.firmset.homestead.takeoff.Inputs;
import org.firmset.homestead.takeoff.Needs;
import org.firmset.homestead.takeoff.Worked;
import org.firmset.trade.trace.Kind;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Worksheet;
import org.jspecify.annotations.Nullable;

/** Takeoffs can be worked out, and what they supply can be bought as the material they name. */
final class TakeoffRules {
    private static final double MOST_PACKS = 100_000;

    private final Map<String, Material> materials;
    private final List<Fault> faults = new ArrayList<>();

    private TakeoffRules(Homestead homestead) {
        materials = homestead.materials().stream()
                .collect(Collectors.toMap(Material::key, Function.identity(), (a, b) -> a));
    }

    static List<Fault> faults(Homestead homestead) {
        TakeoffRules rules = new TakeoffRules(homestead);
        List<Takeoff> takeoffs = homestead.takeoffs();
        for (int i = 0; i < takeoffs.size(); i++) {
            rules.check(takeoffs.get(i), "/takeoffs/" + i);
        }
        return rules.faults;
    }

    private void check(Takeoff takeoff, String pointer) {
        Optional<Kind<?>> kind = Catalogue.find(takeoff.kind());
        if (kind.isEmpty()) {
            faults.add(new Fault(
                    pointer + "/kind",
                    takeoff.kind(),
                    "is no kind of takeoff",
                    "Known are " + Catalogue.all().stream().map(Kind::key).collect(Collectors.joining(", "))));
            return;
        }
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < takeoff.given().size(); i++) {
            if (!seen.add(takeoff.given().get(i).input())) {
                faults.add(new Fault(
                        pointer + "/given/" + i + "/input",
                        takeoff.given().get(i).input(),
                        "is given twice",
                        "Write each input once"));
            }
        }
        switch (Inputs.work(kind.get(), Inputs.texts(takeoff.given()))) {
            case Worked.Refused refused -> refused.faults().forEach(f -> refuse(takeoff, f, pointer));
            case Worked.Done done -> checkSupplies(takeoff, done.worksheet(), pointer);
        }
    }

    private void refuse(Takeoff takeoff, InputFault fault, String pointer) {
        for (int i = 0; i < takeoff.given().size(); i++) {
            if (takeoff.given().get(i).input().equals(fault.input())) {
                faults.add(
                        new Fault(pointer + "/given/" + i + "/value", fault.value(), fault.problem(), fault.remedy()));
                return;
            }
        }
        faults.add(new Fault(pointer + "/given", fault.input(), fault.problem(), fault.remedy()));
    }

    private void checkSupplies(Takeoff takeoff, Worksheet worksheet, String pointer) {
        for (int i = 0; i < takeoff.supplies().size(); i++) {
            Supply supply = takeoff.supplies().get(i);
            String place = pointer + "/supplies/" + i;
            Optional<Line> line = worksheet.line(supply.line()).filter(l -> l.role() == Line.Role.MATERIAL);
            if (line.isEmpty()) {
                faults.add(new Fault(
                        place + "/line",
                        supply.line(),
                        "is no quantity of this takeoff",
                        "Known are "
                                + worksheet.lines(Line.Role.MATERIAL).stream()
                                        .map(Line::key)
                                        .collect(Collectors.joining(", "))));
                continue;
            }
            @Nullable Material material = materials.get(supply.material());
            if (material != null) {
                check(line.get(), material, place);
            }
        }
    }

    private void check(Line line, Material material, String place) {
        OptionalDouble packs = Needs.packs(line.amount(), material);
        if (packs.isEmpty()) {
            faults.add(new Fault(
                    place + "/material",
                    material.key(),
                    "has packs of no volume, mass or length to divide " + line.name() + " by",
                    "Write what a pack of it holds"));
        } else if (packs.getAsDouble() > MOST_PACKS) {
            faults.add(new Fault(
                    place + "/material",
                    material.key(),
                    "would be more than 100,000 packs",
                    "Look at the dimensions, or at what a pack holds"));
        }
    }
}
