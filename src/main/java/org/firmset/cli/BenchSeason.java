package org.firmset.cli;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.firmset.plan.DayPower;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Layout;
import org.firmset.plan.LeastWait;
import org.firmset.plan.Material;
import org.firmset.plan.Need;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.PowerSupply;
import org.firmset.plan.Site;
import org.firmset.plan.SiteDay;
import org.firmset.plan.Stage;
import org.firmset.plan.Style;
import org.firmset.plan.Subproject;
import org.firmset.plan.Trip;
import org.firmset.plan.Wait;
import org.firmset.plan.WaitKind;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.MassLimit;
import org.firmset.trade.haul.Rig;

/**
 * Made-up planning problems of realistic shape for measuring: three to five subprojects, chains of stages with a few
 * links across, a third of the links with 3 to 28 days of cure, weekends of two days, vehicles and battery that bind now
 * and then. The same numbers always give the same problem.
 */
final class BenchSeason {
    private static final LocalDate STATUS = LocalDate.of(2027, 3, 1);
    private static final int USABLE_WATT_HOURS = 2_400;
    private static final PowerSupply BATTERY = new PowerSupply(USABLE_WATT_HOURS, 100, 100, PowerSupply.Generator.NONE);
    /** 900 Wh, the most around noon. */
    private static final DayPower SUNNY = new DayPower(
            List.of(
                    0L, 0L, 0L, 0L, 0L, 0L, 0L, 20L, 50L, 80L, 100L, 120L, 130L, 120L, 100L, 80L, 60L, 40L, 0L, 0L, 0L,
                    0L, 0L, 0L),
            0,
            0,
            true,
            7);

    private static final String BAG = "bag";
    private static final String PIECE = "piece";

    private final SplittableRandom random;
    private final int stageCount;
    private final int weekends;

    private BenchSeason(int stageCount, int weekends, long seed) {
        this.random = new SplittableRandom(seed);
        this.stageCount = stageCount;
        this.weekends = weekends;
    }

    static PlanningProblem problem(int stages, int weekends, long seed) {
        return new BenchSeason(stages, weekends, seed).problem();
    }

    private PlanningProblem problem() {
        int lanes = 3 + random.nextInt(3);
        List<Subproject> subprojects = new ArrayList<>();
        for (int p = 0; p < lanes; p++) {
            subprojects.add(new Subproject("p" + p, "Subproject " + p, 1 + random.nextInt(5), null));
        }
        List<Stage> stages = new ArrayList<>();
        for (int s = 0; s < stageCount; s++) {
            stages.add(stage(s, "p" + s % lanes));
        }
        return new PlanningProblem(
                STATUS,
                Style.SOONEST,
                trips(),
                subprojects,
                stages,
                waits(lanes),
                materials(),
                List.of(new DeliveryOffer(
                        "yard",
                        "Yard",
                        java.util.Set.of(BAG, PIECE),
                        4_000_000,
                        STATUS.plusDays(14),
                        EnumSet.allOf(DayOfWeek.class),
                        15_000)),
                new Site(1_500_000, BATTERY, List.of()),
                List.of(),
                List.of(),
                null,
                List.of());
    }

    /** Labour is dealt out so that about two thirds of the weekends' hours are needed. */
    private Stage stage(int s, String lane) {
        double perStage = weekends * 2 * 48 * 0.66 / stageCount;
        int labour = (int) Math.max(4, Math.min(40, perStage * (0.4 + 1.2 * random.nextDouble())));
        boolean inOneGo = random.nextInt(4) == 0;
        List<Need> needs = new ArrayList<>();
        if (random.nextInt(3) == 0) {
            needs.add(new Need(BAG, 2 + random.nextInt(30)));
        }
        if (random.nextInt(5) == 0) {
            needs.add(new Need(PIECE, 1 + random.nextInt(10)));
        }
        return new Stage(
                "s" + s,
                "Stage " + s,
                lane,
                labour,
                1 + random.nextInt(2),
                inOneGo ? Layout.IN_ONE_GO : Layout.SPLITTABLE,
                4,
                Stage.NO_LIMIT,
                random.nextInt(4) == 0 ? Math.min(100 + random.nextInt(250), USABLE_WATT_HOURS * 4L / labour) : 0,
                true,
                List.of(),
                needs,
                List.of(),
                null,
                null);
    }

    private List<Wait> waits(int lanes) {
        List<Wait> waits = new ArrayList<>();
        for (int s = 0; s < stageCount; s++) {
            if (s >= lanes) {
                waits.add(wait(s - lanes, s));
            }
            if (s > lanes && random.nextInt(8) == 0) {
                int before = random.nextInt(s);
                if (before != s - lanes) {
                    waits.add(wait(before, s));
                }
            }
        }
        return waits;
    }

    private Wait wait(int from, int to) {
        boolean cures = random.nextInt(3) == 0;
        return new Wait(
                "w" + from + "-" + to,
                "Wait",
                cures ? WaitKind.CURE : WaitKind.FOLLOWS,
                "s" + from,
                "s" + to,
                new LeastWait.Days(cures ? 3 + random.nextInt(26) : 0),
                Wait.NO_LIMIT);
    }

    private static List<Material> materials() {
        return List.of(
                new Material(BAG, "Bag", 36_300, 22_000, 600, true, 90, STATUS, 750),
                new Material(PIECE, "Piece", 12_000, 30_000, 2_400, false, Material.NEVER_GOES_OFF, STATUS, 1_200));
    }

    private List<Trip> trips() {
        Rig rig = new Rig(
                "rig",
                "Pickup",
                List.of(new Bay("bed", "Pickup", 1_700_000, 2_500)),
                List.of(new MassLimit("payload", 640_000, Map.of("bed", 1000))));
        List<Trip> trips = new ArrayList<>();
        LocalDate saturday = STATUS.plusDays(5);
        for (int t = 0; t < weekends; t++) {
            int people = random.nextInt(6) == 0 ? 1 : 2;
            LocalDate date = saturday.plusWeeks(t);
            List<SiteDay> days = List.of(
                    new SiteDay(date, 24 * people, people, SUNNY),
                    new SiteDay(date.plusDays(1), 24 * people, people, SUNNY));
            trips.add(new Trip("t" + t, days, rig, 9_000, 1, 8, 2_500));
        }
        return trips;
    }
}
