package org.firmset.season.day;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Need;
import org.firmset.homestead.Stage;
import org.firmset.homestead.ToolTime;
import org.firmset.homestead.takeoff.Needs;
import org.firmset.trade.power.Overload;
import org.firmset.trade.power.PowerBlock;
import org.firmset.trade.power.PowerDay;
import org.firmset.trade.power.SunCurve;
import org.firmset.trade.power.Tool;

/** What the stages of a homestead draw. */
public final class StageEnergy {
    /** No sum of minutes and watts is exact; a whole watt-hour more for that would be wrong. */
    private static final double SLACK = 1e-6;

    private static final LocalDate ANY_DATE = LocalDate.EPOCH;

    private final Map<String, Tool> tools;
    private final Map<String, Stage> stages;
    private final Optional<SitePower> power;

    private StageEnergy(Homestead homestead) {
        // the packs of takeoffs count as the packs that are written
        Homestead reckoned = Needs.reckoned(homestead);
        stages = reckoned.stages().stream()
                .collect(Collectors.toMap(Stage::key, s -> s, (a, b) -> a, LinkedHashMap::new));
        tools = homestead.tools().stream()
                .filter(t -> t.draw() != null)
                .collect(Collectors.toMap(org.firmset.homestead.Tool::key, StageEnergy::tool));
        power = SitePower.of(homestead);
    }

    public static StageEnergy of(Homestead homestead) {
        return new StageEnergy(homestead);
    }

    private static Tool tool(org.firmset.homestead.Tool tool) {
        var draw = tool.draw();
        return new Tool(
                tool.name(),
                draw == null ? 0 : draw.value().doubleValue(),
                tool.dutyPercent(),
                tool.surgeFactor() == null ? 1 : tool.surgeFactor().doubleValue());
    }

    /** Watt-hours that the tools take for each hour of labour. @param stage a key of the homestead's */
    public double toolsWattHours(String stage) {
        Stage known = known(stage);
        double typed = known.energyPerHour() == null
                ? 0
                : known.energyPerHour().value().doubleValue();
        return typed
                + known.toolTimes().stream()
                        .mapToDouble(t -> wattHours(t, known))
                        .sum();
    }

    /** Watt-hours that the battery gives for each hour of labour, with what the inverter loses, rounded up. */
    public long batteryWattHours(String stage) {
        double taken = toolsWattHours(stage);
        double given = power.map(p -> p.system().inverter().fromBattery(taken)).orElse(taken);
        return (long) Math.ceil(given - SLACK);
    }

    private double wattHours(ToolTime time, Stage stage) {
        Tool tool = tools.get(time.tool());
        if (tool == null) {
            return 0;
        }
        double minutes = time.minutes().doubleValue();
        String material = time.material();
        double anHour = material == null ? minutes : minutes * packs(stage, material) / labourHours(stage);
        return tool.averageWatts() * anHour / 60;
    }

    /** Packs of a material that the stage uses up in all. */
    static int packs(Stage stage, String material) {
        return stage.needs().stream()
                .filter(n -> n.material().equals(material))
                .mapToInt(Need::packs)
                .sum();
    }

    private static double labourHours(Stage stage) {
        return stage.labour().quarters() / 4.0;
    }

    /** What would be too much for the inverter if all tools of the stage ran at once. */
    public List<Overload> overloads(String stage) {
        if (power.isEmpty()) {
            return List.of();
        }
        Stage known = known(stage);
        List<PowerBlock> atOnce = Stream.concat(
                        known.tools().stream(), known.toolTimes().stream().map(ToolTime::tool))
                .distinct()
                .map(tools::get)
                .flatMap(Stream::ofNullable)
                .map(t -> new PowerBlock(t, LocalTime.NOON, 1))
                .toList();
        PowerDay day = new PowerDay(ANY_DATE, SunCurve.dark(60), 20, power.get().baseWatts(), atOnce, 0);
        return Overload.of(power.get().system().inverter(), day);
    }

    /** The stage with the needs of its takeoffs. */
    Stage known(String key) {
        Stage stage = stages.get(key);
        if (stage == null) {
            throw new IllegalArgumentException("stage [" + key + "] is none of the homestead's " + stages.keySet());
        }
        return stage;
    }
}
