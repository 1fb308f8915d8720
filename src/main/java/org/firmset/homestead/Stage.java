package org.firmset.homestead;

import java.time.LocalDate;
import java.util.List;
import org.firmset.measure.Described;
import org.firmset.measure.Energy;
import org.firmset.measure.Hours;
import org.firmset.measure.Volume;
import org.jspecify.annotations.Nullable;

@Described("One piece of work done on site.")
public record Stage(
        @Described(value = "Key of the stage.", key = true) String key,
        @Described("Name of the stage.") String name,

        @Described(value = "The subproject it belongs to.", names = "subproject")
        String subproject,

        @Described(value = "Labour of all people together.", least = "0.25 h", most = "2000 h")
        Hours labour,

        @Described(value = "The least number of people who must be there.", least = "1", most = "50")
        int crew,

        @Described("How its labour may lie on site days.") StageLayout layout,

        @Described(
                value = "The least labour worth starting on one day; left out for a quarter of an hour.",
                most = "500 h")
        @Nullable
        Hours leastBlock,

        @Described(
                value = "The most labour it can take on one day; left out for no limit.",
                least = "0.25 h",
                most = "500 h")
        @Nullable
        Hours mostPerDay,

        @Described(value = "Energy for each hour of labour; left out for none.", least = "0 Wh", most = "20 kWh")
        @Nullable
        Energy energyPerHour,

        @Described(value = "Tools it uses.", names = "tool") List<String> tools,

        @Described("The part of the year in which it can be done; left out for any.") @Nullable
        SeasonWindow season,

        @Described("It cannot be done before this date; left out for none.") @Nullable
        LocalDate notBefore,

        @Described("It cannot be done after this date; left out for none.") @Nullable
        LocalDate notAfter,

        @Described("What the weather must be like; left out for any.") @Nullable
        Conditions conditions,

        @Described("What it uses up.") List<Need> needs,
        @Described("What can hurt someone.") List<Hazard> hazards,

        @Described("What has been done of it; left out when it has not begun.") @Nullable
        Progress progress,

        @Described("Anything worth remembering on site; left out for nothing.") @Nullable
        String note,

        @Described("How long which tools run; what it draws by the hour comes on top.")
        List<ToolTime> toolTimes,

        @Described(value = "It may go on by head-lamp when it is dark.", usual = "false")
        boolean headLamp,

        @Described(
                value = "Water it takes for mixing, curing and cleaning; left out for none.",
                least = "0 L",
                most = "1000 m3")
        @Nullable
        Volume water) {
    public Stage {
        tools = List.copyOf(tools);
        needs = List.copyOf(needs);
        hazards = List.copyOf(hazards);
        toolTimes = List.copyOf(toolTimes);
    }

    /** The same with other needs. */
    public Stage withNeeds(List<Need> changed) {
        return new Stage(
                key,
                name,
                subproject,
                labour,
                crew,
                layout,
                leastBlock,
                mostPerDay,
                energyPerHour,
                tools,
                season,
                notBefore,
                notAfter,
                conditions,
                changed,
                hazards,
                progress,
                note,
                toolTimes,
                headLamp,
                water);
    }
}
