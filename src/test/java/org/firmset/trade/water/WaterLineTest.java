package org.firmset.trade.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Results;
import org.firmset.trade.trace.Table;
import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WaterLineTest {
    private static final Given<WaterLine> USUAL = Given.of(WaterKinds.WATER_LINE);
    /** Bare ends, so that the pipes decide. */
    private static final Given<WaterLine> OPEN = USUAL.with("fixture", "open-end");

    private static List<Amount> row(Table table, String outlet, String level) {
        return table.rows().stream()
                .filter(r -> Results.word(r.get(0)).equals(outlet)
                        && Results.word(r.get(1)).equals(level))
                .findFirst()
                .orElseThrow();
    }

    private static double flow(Table table, String outlet, String level) {
        return Results.amount(row(table, outlet, level).get(2), "gpm");
    }

    /** Expected flows were found by bisection in another program. */
    @Nested
    class Flows {
        @ParameterizedTest(name = "{0}, {1}: {2} and {3} gpm alone, {4} and {5} gpm together")
        @CsvSource(textBlock = """
                darcy-weisbach, full,         0.7641525260, 0.4900307722, 0.7606960064, 0.4831026252
                darcy-weisbach, half full,    0.7052685978, 0.3920665542, 0.7031806411, 0.3861671950
                darcy-weisbach, nearly empty, 0.6543925424, 0.2911632349, 0.6531970153, 0.2851880293
                hazen-williams, full,         0.7639565547, 0.4913606496, 0.7605231517, 0.4839312454
                hazen-williams, half full,    0.7054827626, 0.3938885626, 0.7027897165, 0.3864122744
                hazen-williams, nearly empty, 0.6549648214, 0.2935085389, 0.6530307897, 0.2855575263
                """)
        void of_two_sinks(String law, String level, double sink, double tap, double sinkToo, double tapToo) {
            List<Table> tables = USUAL.with("law", law).work().tables();
            assertThat(flow(tables.get(0), "cabin sink", level)).isCloseTo(sink, within(1e-8));
            assertThat(flow(tables.get(0), "shop tap", level)).isCloseTo(tap, within(1e-8));
            assertThat(flow(tables.get(1), "cabin sink", level)).isCloseTo(sinkToo, within(1e-8));
            assertThat(flow(tables.get(1), "shop tap", level)).isCloseTo(tapToo, within(1e-8));
        }

        @ParameterizedTest(name = "{0}: {1} and {2} gpm alone, {3} and {4} gpm together")
        @CsvSource(textBlock = """
                darcy-weisbach, 6.083294470543, 4.473918389483, 5.737784294059, 0.999149604552
                hazen-williams, 6.504949379304, 4.844206331403, 6.127403873990, 1.103902704547
                """)
        void of_two_bare_ends(String law, double sink, double tap, double sinkToo, double tapToo) {
            List<Table> tables = OPEN.with("law", law).work().tables();
            assertThat(flow(tables.get(0), "cabin sink", "full")).isCloseTo(sink, within(1e-7));
            assertThat(flow(tables.get(0), "shop tap", "full")).isCloseTo(tap, within(1e-7));
            assertThat(flow(tables.get(1), "cabin sink", "full")).isCloseTo(sinkToo, within(1e-7));
            assertThat(flow(tables.get(1), "shop tap", "full")).isCloseTo(tapToo, within(1e-7));
        }

        @Test
        void an_outlet_with_a_rating_of_its_own_follows_it() {
            Table alone = USUAL.with("outlets", "a = 120 ft, 12 ft, 2.2 gpm at 60 psi; b = 120 ft, 12 ft")
                    .with("fixture", "open-end")
                    .work()
                    .tables()
                    .getFirst();
            assertThat(flow(alone, "a", "full")).isCloseTo(0.7641525260, within(1e-8));
            assertThat(flow(alone, "b", "full")).isCloseTo(6.083294470543, within(1e-7));
        }

        @Test
        void every_fitting_counts() {
            double usual = total(OPEN);
            for (String fitting :
                    List.of("elbows", "tees", "valves", "globeValves", "checkValves", "branchElbows", "branchValves")) {
                assertThat(total(OPEN.with(fitting, "9"))).as(fitting).isLessThan(usual);
            }
        }

        private static double total(Given<WaterLine> line) {
            return Results.amount(line.work(), "flow-all", "gpm");
        }
    }

    @Nested
    class Tables {
        private final List<Table> tables = USUAL.work().tables();

        @Test
        void say_what_they_are() {
            assertThat(tables)
                    .extracting(Table::title)
                    .containsExactly(
                            "One outlet open at a time", "All outlets open together", "Pressure with all outlets shut");
            assertThat(tables.get(0).rows()).hasSize(6);
            assertThat(tables.get(1).rows()).hasSize(6);
        }

        @Test
        void pressure_before_a_running_sink_is_that_of_its_flow() {
            List<Amount> row = row(tables.get(0), "cabin sink", "full");
            double flow = Results.amount(row.get(2), "gpm");
            assertThat(Results.amount(row.get(3), "psi")).isCloseTo(60 * flow * flow / (2.2 * 2.2), within(1e-6));
            // 0.7642 gpm through 0.824 in
            assertThat(Results.amount(row.get(4), "ft/s")).isCloseTo(0.459749, within(1e-5));
        }

        @Test
        void a_bare_end_has_no_pressure() {
            List<Amount> row = row(OPEN.work().tables().get(1), "cabin sink", "full");
            assertThat(Results.amount(row.get(3), "psi")).isZero();
            assertThat(Results.amount(row.get(4), "ft/s")).isCloseTo(3.452068, within(1e-5));
        }

        @Test
        void pressures_of_shut_outlets_are_those_of_their_height() {
            Table shut = USUAL.with("outlets", "low = 1 ft, 12 ft; high = 1 ft, -4 ft")
                    .work()
                    .tables()
                    .getLast();
            assertThat(shut.rows()).hasSize(2);
            List<Amount> low = shut.rows().get(0);
            List<Amount> high = shut.rows().get(1);
            assertThat(Results.word(low.getFirst())).isEqualTo("low");
            assertThat(Results.amount(low.get(1), "ft")).isEqualTo(12);
            assertThat(Results.amount(low.get(2), "psi")).isCloseTo(17 * 0.433399, within(1e-4));
            assertThat(Results.amount(low.get(3), "psi")).isCloseTo(12.5 * 0.433399, within(1e-4));
            assertThat(Results.amount(high.get(2), "psi")).isCloseTo(0.433399, within(1e-4));
            assertThat(Results.amount(high.get(3), "psi")).isZero();
        }
    }

    @Nested
    class Lines {
        private final Worksheet sheet = OPEN.work();

        @Test
        void are_these() {
            assertThat(Results.keys(sheet))
                    .containsExactly(
                            "density",
                            "viscosity",
                            "static-pressure",
                            "least-flow",
                            "flow-all",
                            "flow-all-low",
                            "main-speed",
                            "main-friction",
                            "main-friction-other",
                            "main-fittings",
                            "main-equivalent",
                            "lasts",
                            "lasts-low",
                            "flushes",
                            "main-pipe",
                            "branch-pipe");
        }

        @Test
        void water_at_50_degrees_fahrenheit() {
            assertThat(Results.amount(sheet, "density", "kg/m3")).isCloseTo(999.7027, within(1e-4));
            assertThat(Results.amount(sheet, "viscosity", "mm2/s")).isCloseTo(1.30629, within(1e-5));
        }

        @Test
        void static_pressure_is_that_of_the_lowest_outlet() {
            assertThat(Results.amount(sheet, "static-pressure", "psi")).isCloseTo(17 * 0.433399, within(1e-4));
            assertThat(Results.term(sheet, "static-pressure", "z", "ft")).isEqualTo(12);
            assertThat(Results.term(sheet, "static-pressure", "d", "ft")).isEqualTo(5);
            Worksheet turned = OPEN.with("outlets", "a = 1 ft, 2 ft; b = 1 ft, 9 ft; c = 1 ft, 3 ft")
                    .work();
            assertThat(Results.term(turned, "static-pressure", "z", "ft")).isEqualTo(9);
        }

        @Test
        void flows() {
            assertThat(Results.amount(sheet, "least-flow", "gpm")).isCloseTo(4.473918389, within(1e-7));
            assertThat(Results.amount(sheet, "flow-all", "gpm")).isCloseTo(6.736933899, within(1e-7));
            assertThat(Results.amount(sheet, "flow-all-low", "gpm"))
                    .isCloseTo(
                            flow(sheet.tables().get(1), "cabin sink", "nearly empty")
                                    + flow(sheet.tables().get(1), "shop tap", "nearly empty"),
                            within(1e-7));
            assertThat(Results.term(sheet, "flow-all-low", "d", "ft")).isCloseTo(0.5, within(1e-9));
            assertThat(Results.line(sheet, "least-flow").caution()).contains("air gathers there");
            assertThat(fixture(sheet)).isEqualTo("bare end");
            assertThat(fixture(USUAL.work())).isEqualTo("2.2 gpm at 60 psi");
        }

        private static String fixture(Worksheet sheet) {
            return Results.word(
                    Results.line(sheet, "least-flow").terms().getLast().amount());
        }

        @Test
        void the_main() {
            assertThat(Results.amount(sheet, "main-speed", "ft/s")).isCloseTo(2.500926405, within(1e-7));
            assertThat(Results.term(sheet, "main-speed", "Q", "gpm")).isCloseTo(6.7369338986, within(1e-7));
            double flow = 6.7369338986 * 3.785411784 / 60_000;
            double bore = 1.049 * 0.0254;
            double viscosity = Water.kinematicViscosity(10);
            assertThat(Results.amount(sheet, "main-friction", "m"))
                    .isCloseTo(Friction.darcy(flow, 60.96, bore, 1.5e-6, viscosity), within(1e-7));
            assertThat(Results.amount(sheet, "main-friction-other", "m"))
                    .isCloseTo(Friction.hazenWilliams(flow, 60.96, bore, 150), within(1e-7));
            assertThat(Results.term(sheet, "main-fittings", "k", "")).isCloseTo(0.5 + 4 * 1.5 + 0.15, within(1e-9));
            assertThat(Results.amount(sheet, "main-fittings", "m"))
                    .isCloseTo(6.65 * Friction.velocityHead(flow, bore), within(1e-7));
            double factor = Friction.factor(Friction.reynolds(flow, bore, viscosity), 1.5e-6 / bore);
            assertThat(Results.amount(sheet, "main-equivalent", "m")).isCloseTo(6.65 * bore / factor, within(1e-6));
            assertThat(Results.term(sheet, "main-friction", "e", "")).isCloseTo(0.0015, within(1e-12));
        }

        @Test
        void the_laws_change_places() {
            Worksheet hazen = OPEN.with("law", "hazen-williams").work();
            assertThat(Results.line(hazen, "main-friction").formula()).startsWith("h = 10.67 L");
            assertThat(Results.line(hazen, "main-friction-other").formula()).startsWith("h = f L / d");
            assertThat(Results.line(hazen, "main-friction").source()).isEqualTo(Sources.HAZEN_WILLIAMS);
            assertThat(Results.line(hazen, "main-friction-other").source()).isEqualTo(Sources.DARCY);
        }

        @Test
        void every_kind_of_fitting_is_in_the_sum_of_the_main() {
            Worksheet many = OPEN.with("elbows", "1")
                    .with("tees", "2")
                    .with("valves", "3")
                    .with("globeValves", "4")
                    .with("checkValves", "5")
                    .work();
            assertThat(Results.term(many, "main-fittings", "k", ""))
                    .isCloseTo(0.5 + 1.5 + 2 * 0.9 + 3 * 0.15 + 4 * 10 + 5 * 2, within(1e-9));
        }

        @Test
        void how_long_the_tank_lasts() {
            assertThat(Results.amount(sheet, "lasts", "h")).isCloseTo(1650 / 6.7369338986 / 60, within(1e-6));
            assertThat(Results.amount(sheet, "lasts-low", "h"))
                    .isCloseTo(1650 / Results.amount(sheet, "flow-all-low", "gpm") / 60, within(1e-6));
            assertThat(Results.amount(sheet, "flushes", "")).isEqualTo(1031);
        }

        @Test
        void pipes_are_what_is_bought() {
            assertThat(sheet.lines(Line.Role.MATERIAL))
                    .extracting(Line::key)
                    .containsExactly("main-pipe", "branch-pipe");
            assertThat(Results.amount(sheet, "main-pipe", "ft")).isEqualTo(200);
            assertThat(Results.amount(sheet, "branch-pipe", "ft")).isEqualTo(180);
        }

        @Test
        void what_is_never_empty_has_no_time() {
            Worksheet dry = OPEN.with("outlets", "roof = 10 ft, -6 ft").work();
            assertThat(dry.line("lasts")).isEmpty();
            assertThat(dry.line("lasts-low")).isEmpty();
            assertThat(dry.line("main-equivalent")).isEmpty();
            assertThat(Results.amount(dry, "flow-all", "gpm")).isZero();
            assertThat(Results.amount(dry, "static-pressure", "psi")).isZero();
        }
    }

    @Nested
    class Findings {
        /** Enough for everybody: a short wide line to a low outlet. */
        private final Given<WaterLine> easy =
                USUAL.with("outlets", "sink = 10 ft, 40 ft, 5 gpm at 30 psi").with("material", "copper");

        @Test
        void nothing_is_said_where_all_is_well() {
            assertThat(easy.work().findings()).isEmpty();
        }

        @Test
        void an_outlet_above_the_water_gets_none() {
            Worksheet sheet = OPEN.with("outlets", "low = 10 ft, 12 ft; high = 10 ft, -3 ft; roof = 1 ft, -5 ft")
                    .work();
            assertThat(Results.warnings(sheet))
                    .contains(
                            "No water from a tank that is full, as the end lies at or above the water: roof.",
                            "No water from a tank that is half full, as the end lies at or above the water: high,"
                                    + " roof.",
                            "No water from a tank that is nearly empty, as the end lies at or above the water: high,"
                                    + " roof.");
            assertThat(flow(sheet.tables().getFirst(), "roof", "full")).isZero();
            assertThat(flow(sheet.tables().getFirst(), "high", "full")).isPositive();
        }

        @Test
        void an_outlet_that_the_others_starve_is_named() {
            Worksheet sheet = OPEN.with("outlets", "low = 120 ft, 12 ft; high = 60 ft, -4 ft")
                    .work();
            assertThat(flow(sheet.tables().getFirst(), "high", "full")).isCloseTo(1.530964984, within(1e-7));
            assertThat(flow(sheet.tables().get(1), "high", "full")).isZero();
            assertThat(flow(sheet.tables().get(1), "low", "full")).isCloseTo(6.083294470543, within(1e-7));
            assertThat(Results.warnings(sheet))
                    .contains("No water while all outlets are open, from a tank that is full, as the others draw the"
                            + " pressure down: high.")
                    .noneMatch(w -> w.startsWith("No water while all outlets are open, from a tank that is half full"));
        }

        @Test
        void too_little_is_said_once_for_each_way_of_opening_with_the_fullest_tank_that_falls_short() {
            Given<WaterLine> line = easy.with("leastPressure", "0 psi");
            List<Table> tables = line.work().tables();
            double full = flow(tables.getFirst(), "sink", "full");
            double half = flow(tables.getFirst(), "sink", "half full");
            double low = flow(tables.getFirst(), "sink", "nearly empty");
            assertThat(shortfalls(line.with("leastFlow", gallons(low - 1e-6)))).isEmpty();
            assertThat(shortfalls(line.with("leastFlow", gallons(low + 1e-6))))
                    .containsExactly(
                            "Less than the wanted flow or pressure from a tank that is nearly empty, outlets open one"
                                    + " at a time: sink.",
                            "Less than the wanted flow or pressure from a tank that is nearly empty, outlets open all"
                                    + " together: sink.");
            assertThat(shortfalls(line.with("leastFlow", gallons(half + 1e-6))))
                    .hasSize(2)
                    .allMatch(w -> w.contains("half full"));
            assertThat(shortfalls(line.with("leastFlow", gallons(full + 1e-6))))
                    .hasSize(2)
                    .allMatch(w -> w.contains("that is full"));
        }

        private static String gallons(double value) {
            return "%.9f gpm".formatted(value);
        }

        private static List<String> shortfalls(Given<WaterLine> line) {
            return Results.warnings(line.work()).stream()
                    .filter(w -> w.startsWith("Less than"))
                    .toList();
        }

        @Test
        void least_pressure_is_that_of_the_fixtures_or_as_entered() {
            Given<WaterLine> line = easy.with("leastFlow", "0 gpm").with("outlets", "sink = 1 ft, 18.5 ft");
            Table alone = line.work().tables().getFirst();
            double low = Results.amount(row(alone, "sink", "nearly empty").get(3), "psi");
            assertThat(low).isBetween(8.0, 8.3);
            assertThat(shortfalls(line)).isEmpty();
            assertThat(shortfalls(line.with("fixtureGroup", "flush-valve"))).hasSize(2);
            assertThat(shortfalls(line.with("leastPressure", "%.9f psi".formatted(low - 1e-5))))
                    .isEmpty();
            assertThat(shortfalls(line.with("leastPressure", "%.9f psi".formatted(low + 1e-5))))
                    .hasSize(2);
        }

        @Test
        void a_bare_end_needs_flow_but_no_pressure() {
            Worksheet sheet = OPEN.with("fixtureGroup", "flush-valve")
                    .with("outlets", "tap = 10 ft, 5 ft")
                    .work();
            assertThat(Results.word(
                            row(sheet.tables().getFirst(), "tap", "full").get(5)))
                    .isEqualTo("yes");
            Worksheet more = OPEN.with("leastFlow", "90 gpm").work();
            assertThat(Results.word(
                            row(more.tables().getFirst(), "shop tap", "full").get(5)))
                    .isEqualTo("no");
        }

        @Test
        void over_80_psi_when_shut_needs_a_reducing_valve() {
            double feet = 80 / 0.4333993 - 5;
            assertThat(Results.warnings(
                            easy.with("outlets", "sink = 10 ft, %.4f ft, 5 gpm at 30 psi".formatted(feet - 0.01))
                                    .work()))
                    .isEmpty();
            assertThat(Results.warnings(
                            easy.with("outlets", "sink = 10 ft, %.4f ft, 5 gpm at 30 psi".formatted(feet + 0.01))
                                    .work()))
                    .singleElement()
                    .asString()
                    .contains("over 80 psi");
        }

        @Test
        void water_faster_than_8_feet_a_second_in_the_main_is_warned_of() {
            Given<WaterLine> line = OPEN.with("mainLength", "1 m")
                    .with("mainBore", "1 in")
                    .with("branchBore", "2 in")
                    .with("leastFlow", "0 gpm");
            double slow = speedTo("main-speed", line, "1.9 ft");
            assertThat(slow).isBetween(6.5, 8.0);
            assertThat(Results.warnings(
                            line.with("outlets", "end = 1 ft, 1.9 ft").work()))
                    .isEmpty();
            Worksheet fast = line.with("outlets", "end = 1 ft, 5 ft").work();
            assertThat(Results.amount(fast, "main-speed", "ft/s")).isBetween(8.0, 9.8);
            assertThat(Results.warnings(fast))
                    .singleElement()
                    .asString()
                    .startsWith("The water runs faster than 8 ft/s");
        }

        private static double speedTo(String key, Given<WaterLine> line, String drop) {
            return Results.amount(line.with("outlets", "end = 1 ft, " + drop).work(), key, "ft/s");
        }

        @Test
        void so_is_a_fast_branch() {
            Given<WaterLine> line =
                    OPEN.with("mainBore", "4 in").with("branchBore", "1 in").with("leastFlow", "0 gpm");
            Worksheet fast = line.with("outlets", "end = 1 ft, 10 ft").work();
            assertThat(Results.amount(
                            row(fast.tables().getFirst(), "end", "full").get(4), "ft/s"))
                    .isBetween(8.0, 12.0);
            assertThat(Results.amount(fast, "main-speed", "ft/s")).isLessThan(1);
            assertThat(Results.warnings(fast))
                    .singleElement()
                    .asString()
                    .startsWith("The water runs faster than 8 ft/s");
        }

        @Test
        void uncertain_friction_is_said_of_darcy_between_the_two_kinds_of_flow() {
            // 4 gpm: Re 11,700 in the branch, 9,200 in the main
            assertThat(Results.notes(easy.work())).isEmpty();
            Worksheet between = easy.with("branchBore", "3.2 in").work();
            assertThat(Results.notes(between)).singleElement().asString().contains("between 2,300 and 4,000");
            Worksheet inMain = easy.with("mainBore", "3.2 in").work();
            assertThat(Results.notes(inMain)).singleElement().asString().contains("between 2,300 and 4,000");
        }

        @Test
        void wholly_laminar_flow_is_certain_for_darcy_but_not_for_hazen_and_williams() {
            Given<WaterLine> wide = easy.with("outlets", "sink = 10 ft, 40 ft")
                    .with("mainBore", "4 in")
                    .with("branchBore", "4 in");
            assertThat(Results.notes(wide.work()))
                    .singleElement()
                    .asString()
                    .startsWith("The two laws of friction differ");
            assertThat(Results.notes(wide.with("law", "hazen-williams").work()))
                    .hasSize(2)
                    .first()
                    .asString()
                    .contains("turbulent water only");
            assertThat(Results.notes(easy.with("law", "hazen-williams").work())).isEmpty();
        }

        @Test
        void where_the_two_laws_differ_by_more_than_15_percent_it_is_said() {
            assertThat(Results.notes(easy.with("material", "pvc").work()))
                    .singleElement()
                    .asString()
                    .startsWith("The two laws of friction differ by more than 15 %");
            assertThat(Results.notes(easy.with("material", "pvc")
                            .with("law", "hazen-williams")
                            .work()))
                    .singleElement()
                    .asString()
                    .startsWith("The two laws of friction differ by more than 15 %");
            assertThat(ratio(easy.with("material", "pvc").with("waterTemperature", "20.8 degC")))
                    .isBetween(1.145, 1.15);
            assertThat(Results.notes(easy.with("material", "pvc")
                            .with("waterTemperature", "20.8 degC")
                            .work()))
                    .isEmpty();
        }

        private static double ratio(Given<WaterLine> line) {
            Worksheet sheet = line.work();
            return Results.amount(sheet, "main-friction", "m") / Results.amount(sheet, "main-friction-other", "m");
        }

        @Test
        void a_dry_outlet_is_not_called_slow() {
            Worksheet dry = USUAL.with("law", "hazen-williams")
                    .with("outlets", "roof = 1 ft, -9 ft")
                    .work();
            assertThat(Results.notes(dry)).isEmpty();
        }
    }
}
