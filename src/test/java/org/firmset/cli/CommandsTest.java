package org.firmset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.firmset.homestead.file.RecordJson;
import org.firmset.measure.UnitSystem;
import org.firmset.season.result.SeasonReport;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CommandsTest {
    private static final String DEMO = "seed-data/juniper-bench.json";
    private static final String SMALL = "seed-data/two-weekends.json";
    private static final String RECEIPTS = "seed-data/juniper-bench-receipts.csv";
    private static final String FIRST_BUDGET = "seed-data/juniper-bench-first-budget.json";
    private static final Path SCHEMA = Path.of("docs/plan.schema.json");

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String... words) {
        return new Commands(
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8))
                .run(List.of(words));
    }

    private String printed() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String complained() {
        return err.toString(StandardCharsets.UTF_8);
    }

    @Test
    void theDemoIsPlannedTripByTripWithItsCriticalPath() {
        assertThat(run("plan", DEMO, "--date", "2027-03-01", "--proof", "2")).isZero();
        assertThat(printed())
                .contains(
                        "Proven: no plan ",
                        "Power is what ends it, not hours",
                        "TRIP 1",
                        "CRITICAL PATH of Cabin",
                        "Proven: no plan needs fewer than");
    }

    @Test
    void theSmallHomesteadIsPlannedAsItsNoteSaysByHand() {
        assertThat(run("plan", SMALL, "--date", "2027-03-01")).isZero();
        assertThat(printed()).contains("2 trips, 2 runs", "finished Sun 23 May 2027", "€711.80");
    }

    @ParameterizedTest
    @ValueSource(strings = {"soonest", "fewest-trips", "least-money"})
    void everyStyleHasAPlanOfTheDemo(String style) {
        assertThat(run("plan", DEMO, "--date", "2027-03-01", "--proof", "0", "--style", style))
                .isZero();
    }

    @Test
    void whatWouldHaveToChangeIsAnsweredByPlanningAgain() {
        assertThat(run("why", SMALL, "finish", "wood-store", "--date", "2027-03-01"))
                .isZero();
        assertThat(printed())
                .contains("As things are, no plan has it finished by Sat 22 May 2027", "that is proven")
                .contains("several causes work together");
    }

    @Test
    void aTripIsWorthWhatIsLostWithoutIt() {
        assertThat(run("why", SMALL, "trip", "2027-05-22", "--date", "2027-03-01"))
                .isZero();
        assertThat(printed()).containsPattern("Without it .* finishes \\d+ days? later, on");
    }

    @Test
    void theStyleOfAnotherPlanIsSetBesideInColumns() {
        assertThat(run("why", SMALL, "compare", "fewest-trips", "--date", "2027-03-01"))
                .isZero();
        assertThat(printed())
                .contains("Fewest trips keeps ", " of 7 stages where they were", "Both make the same trips.")
                .containsPattern("Subproject +Now +Fewest trips +Difference +Trips with work for it")
                .containsPattern("Wood store +Sun 23 May 2027 +Sun 23 May 2027 +the same day +2 in both");
    }

    @Test
    void whatMorePowerWouldBringIsAnsweredAlsoWhereThereIsNone() {
        assertThat(run("why", SMALL, "power", "--date", "2027-03-01")).isZero();
        assertThat(printed()).contains("There is no power on site that there could be more of.");
    }

    @Test
    void aPlanIsNotSetBesideItself() {
        assertThat(run("why", SMALL, "compare", "soonest", "--date", "2027-03-01"))
                .isEqualTo(2);
        assertThat(complained()).contains("'soonest' is the style of the plan itself");
    }

    @Test
    void theMoneyOfTheDemoIsPrintedWithItsReceipts() {
        assertThat(run(
                        "spend",
                        DEMO,
                        "--receipts",
                        RECEIPTS,
                        "--date",
                        "2026-11-26",
                        "--proof",
                        "0",
                        "--against",
                        FIRST_BUDGET))
                .isZero();
        assertThat(printed())
                .containsPattern("All together +\\$26,200\\.00 +\\$1,821\\.40 +\\$1,830\\.00")
                .contains(
                        "Against the budget of Sat 5 Sep 2026, $24,908.19: ", "The finished work cost $608.28, over by")
                .containsPattern(
                        "Gravel the track to the tank base +\\$337\\.78 .*\\R( +- .*\\R)* +- drives and fuel +\\$112\\.15")
                .contains("Cash needed by the end of each trip");
    }

    @Test
    void aBudgetIsWrittenAndHeldAgainstLater(@TempDir Path folder) {
        String budget = folder.resolve("budget.json").toString();
        assertThat(run("spend", SMALL, "--date", "2027-03-01", "--budget", budget, "--rise", "10", "--a-month", "600"))
                .isZero();
        assertThat(printed()).contains("€711.80 of €750.00", "makes €59.18 more", "At most €600.00 a month");
        assertThat(printed()).containsPattern("(Every month keeps within|Over) €600\\.00");
        out.reset();
        assertThat(run("spend", SMALL, "--date", "2027-03-01", "--against", budget))
                .isZero();
        assertThat(printed()).contains("Against the budget of Mon 1 Mar 2027, €711.80: as it was to be.");
    }

    @Test
    void aBudgetThatCannotBeReadIsToldOfAndTheMoneyPrintedWithoutIt(@TempDir Path folder) throws IOException {
        Path budget = folder.resolve("budget.json");
        assertThat(run("spend", SMALL, "--date", "2027-03-01", "--budget", budget.toString()))
                .isZero();
        String later = Files.readString(budget).replace("\"version\" : 1", "\"version\" : 2");
        Files.writeString(budget, later);
        out.reset();
        assertThat(run("spend", SMALL, "--date", "2027-03-01", "--against", budget.toString()))
                .isEqualTo(1);
        assertThat(printed()).contains("€711.80 of €750.00").doesNotContain("Against the budget");
        assertThat(complained())
                .contains("budget.json cannot be read: a later version of the program kept it")
                .contains("left as it is");
        assertThat(budget).hasContent(later);
    }

    @Test
    void whatIsNoBudgetOrNoReceiptIsRefused(@TempDir Path folder) throws IOException {
        assertThat(run("spend", SMALL, "--against", SMALL)).isEqualTo(2);
        assertThat(complained()).contains("is no budget");
        assertThat(run("spend", SMALL, "--date", "2027-03-01", "--against", FIRST_BUDGET))
                .isEqualTo(2);
        assertThat(complained()).contains("is not all in EUR, the homestead's currency");
        Path table = Files.writeString(folder.resolve("r.csv"), "Date,Supplier,Amount\n2027-13-01,Yard,1.00\n");
        assertThat(run("spend", SMALL, "--receipts", table.toString(), "--date", "2027-03-01"))
                .isEqualTo(1);
        assertThat(run("spend", SMALL, "--rise", "much")).isEqualTo(2);
        assertThat(complained()).contains("'much' are no percent");
    }

    @Test
    void aQuestionAboutWhatIsNotThereSaysWhatIs() {
        assertThat(run("why", SMALL, "finish", "castle", "--date", "2027-03-01"))
                .isEqualTo(2);
        assertThat(run("why", SMALL)).isEqualTo(2);
        assertThat(run("why", SMALL, "perhaps", "--date", "2027-03-01")).isEqualTo(2);
        assertThat(complained()).contains("'castle' is no subproject; there are", "is no question; write finish");
    }

    @Test
    void takeoffsAreListedWithTheirInputs() {
        assertThat(run("takeoff")).isZero();
        assertThat(printed()).contains("wall-fill", "cut-list", "Quantities");
        out.reset();
        assertThat(run("takeoff", "slab", "--units", "metric")).isZero();
        assertThat(printed()).contains("thickness", "From 40 mm to 1 m.", "Usually 10.", "Needed.");
        out.reset();
        assertThat(run("takeoff", "tank")).isZero();
        assertThat(printed()).contains("From 4.409 lb", "Such as: firmset takeoff tank \"shape=nominal\"");
    }

    @Test
    void aTakeoffIsWorkedOutWithFormulaSourceAndCaution() {
        assertThat(run("takeoff", "wall-fill", "length=112 in", "width=112 in", "height=24 in"))
                .isZero();
        assertThat(printed())
                .contains("43 bags (42.77)", "V = N n v / 2 - b", "ASTM C90-06", "Caution: Blocks taper")
                .contains("9.75 h");
        out.reset();
        assertThat(run("takeoff", "wall-fill", "length=112 in", "width=112 in", "height=24 in", "--units", "metric"))
                .isZero();
        assertThat(printed()).contains("0.6606 m3").doesNotContain("ft3;");
    }

    @Test
    void aTakeoffThatIsRefusedSaysWhichInputAndTheRange() {
        assertThat(run("takeoff", "slab", "plan=3 m x 3 m", "thickness=80 degC"))
                .isEqualTo(1);
        assertThat(complained()).contains("thickness [80 degC]", "which is no unit of length");
        assertThat(printed()).isEmpty();
    }

    @Test
    void aTakeoffThatIsNotUnderstoodSaysWhatToWrite() {
        assertThat(run("takeoff", "moat")).isEqualTo(2);
        assertThat(run("takeoff", "slab", "thick")).isEqualTo(2);
        assertThat(run("takeoff", "slab", "plan=1 m x 1 m", "plan=2 m x 1 m")).isEqualTo(2);
        assertThat(complained()).contains("'firmset takeoff' lists them", "write name=value", "is given twice");
    }

    @Test
    void massesArePrintedInTheUnitsAskedFor() {
        run("plan", SMALL, "--date", "2027-03-01", "--units", "us");
        assertThat(printed()).contains("load: Van, 1,907 lb").doesNotContain("865 kg");
    }

    @Test
    void thePlanIsWrittenAsJsonThatFitsItsSchemaAndReadsBack(@TempDir Path folder) throws IOException {
        Path json = folder.resolve("plan.json");
        run("plan", DEMO, "--date", "2027-03-01", "--json", json.toString());
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(SCHEMA));
        assertThat(schema.validate(Files.readString(json), InputFormat.JSON)).isEmpty();
        SeasonReport report = RecordJson.read(SeasonReport.HEADING, SeasonReport.class, Files.readAllBytes(json));
        assertThat(RecordJson.write(SeasonReport.HEADING, report, UnitSystem.US))
                .isEqualTo(Files.readString(json));
    }

    @Test
    void theSchemaInTheDocsIsTheOneOfTheProgram() throws IOException {
        String schema = RecordJson.schema("Season plan", SeasonReport.HEADING, SeasonReport.class);
        if (Boolean.getBoolean("firmset.write")) {
            Files.writeString(SCHEMA, schema);
        }
        assertThat(Files.readString(SCHEMA))
                .as("docs/plan.schema.json; run this test with -Dfirmset.write=true to write it again")
                .isEqualTo(schema);
    }

    @Test
    void planningIsMeasuredInATableForEachSize() {
        assertThat(run("bench", "plan", "--sizes", "12x16", "--seeds", "1", "--efforts", "1"))
                .isZero();
        assertThat(printed())
                .contains("heap limit", "### 12 x 16 (stages x weekends), effort 1", "Medians: first plan")
                .containsPattern("\\| 1 \\| [\\d.]+ \\| \\d+ / \\d+, [\\d.]+; [\\d.]+ \\| \\d+ \\| passes \\|")
                .doesNotContain("Demo homestead", "How cost grows");
    }

    @Test
    void partsOfTheMeasuringOfPlansAreRunApart() {
        assertThat(run("bench", "plan", "edits", "growth", "--sizes", "12x16,1x1", "--seeds", "2"))
                .isZero();
        assertThat(printed())
                .contains("### Edit on 40 x 40", "| passes |", "| median |", "| 12 x 16 |", "| 1 x 1 |")
                .doesNotContain("Medians:");
    }

    @Test
    void splittingLoadsIsMeasuredAndComparedWithWhatIsKnown(@TempDir Path folder) throws IOException {
        // by hand: 6 + 4 and 5 fill two bins of 10, and 15 is over one
        Files.writeString(folder.resolve("bins.txt"), "1\nsmall\n 10 3 2\n6\n5\n4\n");
        assertThat(run("bench", "haul", "--orlib", folder.toString())).isZero();
        assertThat(printed())
                .containsPattern("\\| seed 10 \\| \\d+ \\| \\d+ \\| (yes|no) \\| \\d+ \\| \\d+ \\| \\d+ \\|")
                .containsPattern("\\| small \\| 2 \\| 2 \\| yes \\| \\d+ \\|")
                .contains("1 of 1 reach the fewest known.");
    }

    @Test
    void receiptsAreMeasuredAsTablesAndInTheDatabase() {
        assertThat(run("bench", "spend", "--lines", "100")).isZero();
        assertThat(printed())
                .containsPattern("\\| 100 \\| 0\\.01 \\| \\d+ \\| \\d+ \\| \\d+ \\|")
                .containsPattern("from bytes into the database ms[^\n]*\n[^\n]*\n\\| 100 \\| \\d+ \\|")
                .contains("MiB of heap that cannot be let go of");
        assertThat(run("bench", "spend", "--lines", "100,4")).isEqualTo(2);
        assertThat(complained()).contains("'4' is no number of lines; write some from 5 to 100000");
    }

    @Test
    void lightSunAndBatteryAreMeasured() {
        assertThat(run("bench", "power")).isZero();
        assertThat(printed())
                .containsPattern("\\| battery over a year, hourly steps \\| \\d+\\.\\d\\d \\|")
                .contains(
                        "| light of a year |",
                        "| sun of a year, hourly steps |",
                        "| what it would take for three days |");
    }

    @Nested
    class Refuses {
        @Test
        void binsThatAreNotUnderstood() {
            assertThat(run("bench", "haul", "--orlib", "nowhere")).isEqualTo(2);
            assertThat(complained()).contains("'nowhere' cannot be read");
            assertThat(run("bench", "haul", "--orlib", "README.md")).isEqualTo(2);
            assertThat(run("bench", "haul", "fast")).isEqualTo(2);
            assertThat(complained()).contains("no word 'fast'");
            assertThat(printed()).isEmpty();
        }

        @ParameterizedTest
        @ValueSource(
                strings = {
                    "--sizes=large",
                    "--sizes=12x",
                    "--sizes=12x16x2",
                    "--sizes=0x16",
                    "--sizes=12x16,",
                    "--sizes=3000x16",
                    "--seeds=0",
                    "--seeds=few",
                    "--efforts=1,-5",
                    "--efforts=",
                    "everything"
                })
        void toMeasurePlansWithoutSense(String word) {
            assertThat(run("bench", "plan", word)).isEqualTo(2);
            assertThat(complained()).contains("' is no ", "write ");
            assertThat(printed()).isEmpty();
        }

        @Test
        void aFileThatIsNotThere() {
            assertThat(run("plan", "nowhere.json")).isEqualTo(2);
            assertThat(complained()).contains("nowhere.json cannot be read");
        }

        @Test
        void aFileThatIsNoHomestead() {
            assertThat(run("plan", "pom.xml")).isEqualTo(1);
            assertThat(complained()).contains("is not readable as JSON");
        }

        @ParameterizedTest
        @ValueSource(strings = {"--style=cheap", "--date=tomorrow", "--units=cubits", "--colour=red"})
        void anOptionThatIsNotUnderstood(String option) {
            assertThat(run("plan", SMALL, option)).isEqualTo(2);
            assertThat(complained())
                    .contains(option.substring(option.indexOf('=') + 1).equals("red") ? "--colour" : "'");
        }

        @Test
        void aCommandThatIsNotThere() {
            assertThat(run("dance")).isEqualTo(2);
            assertThat(complained()).contains("'dance' is no command");
        }

        @Test
        void aHomesteadWithoutAPlanAndSaysWhy() {
            assertThat(run("plan", DEMO, "--date", "2027-10-20")).isEqualTo(1);
            assertThat(complained()).contains("There is no plan:");
        }
    }
}
