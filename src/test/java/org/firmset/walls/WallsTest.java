package org.firmset.walls;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The walls between the rooms hold, and are seen to fall in a house built wrongly on purpose. */
class WallsTest {
    private static final JavaClasses HOUSE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.firmset");

    @TestFactory
    Stream<DynamicTest> wallsHold() {
        return new Walls("org.firmset")
                .rules().stream().map(rule -> DynamicTest.dynamicTest(rule.getDescription(), () -> rule.check(HOUSE)));
    }

    @Test
    void roomsLeadInNoCircle() {
        new Walls("org.firmset").noCircles().forEach(rule -> rule.check(HOUSE));
    }

    @Test
    void everyPackageSaysWhatItIsFor() throws IOException {
        try (Stream<Path> folders = Files.walk(Path.of("src/main/java"))) {
            List<Path> silent = folders.filter(Files::isDirectory)
                    .filter(WallsTest::holdsClasses)
                    .filter(folder -> !Files.exists(folder.resolve("package-info.java")))
                    .toList();
            assertThat(silent)
                    .as("folders without package-info.java; write one with a sentence of purpose and @NullMarked")
                    .isEmpty();
        }
    }

    private static boolean holdsClasses(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.anyMatch(f -> f.toString().endsWith(".java"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void aPlanThatUsesTheSeasonIsSeen() {
        String root = "brokenhouse";
        JavaClasses broken = new ClassFileImporter().importPackages(root);
        List<String> reports = new Walls(root)
                .rules().stream()
                        .flatMap(r -> r.evaluate(broken).getFailureReport().getDetails().stream())
                        .toList();
        assertThat(reports)
                .anySatisfy(line -> assertThat(line)
                        .contains("brokenhouse.plan.LeaningPlan")
                        .contains("brokenhouse.season.Leaned"))
                .anySatisfy(line -> assertThat(line)
                        .contains("brokenhouse.plan.LeaningPlan")
                        .contains("jakarta.persistence.Entity"));
    }

    @Test
    void packagesOfARoomThatUseEachOtherAreSeen() {
        JavaClasses broken = new ClassFileImporter().importPackages("brokenhouse");
        List<String> reports = new Walls("brokenhouse")
                .noCircles().stream()
                        .flatMap(r -> r.evaluate(broken).getFailureReport().getDetails().stream())
                        .toList();
        assertThat(reports).anySatisfy(line -> assertThat(line).contains("Slice season.words", "Slice season ->"));
    }
}
