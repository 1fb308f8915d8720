package org.firmset.homestead.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.firmset.homestead.part.Part;
import org.firmset.trade.trace.Kind;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What holds for every calculator, whoever adds one. */
class CatalogueTest {
    @Test
    void keys_are_unique_and_can_be_stored() {
        List<String> keys = Catalogue.all().stream().map(Kind::key).toList();
        assertThat(keys).doesNotHaveDuplicates().allMatch(key -> key.matches("[a-z][a-z0-9-]*"));
        assertThat(keys).allMatch(key -> Catalogue.find(key).isPresent());
        assertThat(Catalogue.find("pyramid")).isEmpty();
    }

    @Test
    void every_shelf_holds_something() {
        assertThat(Catalogue.shelves()).isNotEmpty();
        assertThat(Catalogue.shelves().values()).noneMatch(List::isEmpty);
    }

    @TestFactory
    Stream<DynamicTest> inputs_have_names_of_their_own() {
        return forEachKind(kind -> assertThat(
                        Inputs.of(kind).stream().map(i -> i.part().name()).toList())
                .doesNotHaveDuplicates());
    }

    @TestFactory
    Stream<DynamicTest> usual_values_are_within_their_limits() {
        return forEachKind(kind -> {
            for (Inputs.Input input : Inputs.of(kind)) {
                Part part = input.part();
                // reading refuses what is beyond the limits
                assertThat(part.usual() != null || part.described().usual().isEmpty())
                        .as(part.name())
                        .isTrue();
            }
        });
    }

    @TestFactory
    Stream<DynamicTest> inputs_say_in_a_sentence_what_they_are() {
        return forEachKind(kind -> assertThat(Inputs.of(kind))
                .allMatch(i -> i.part().described().value().matches("[A-Z0-9].*[.]")));
    }

    @TestFactory
    Stream<DynamicTest> measures_have_an_allowed_range() {
        return forEachKind(kind -> assertThat(Inputs.of(kind))
                .filteredOn(i -> i.part().type() == int.class
                        || org.firmset.measure.Measured.class.isAssignableFrom(
                                i.part().type()))
                .allSatisfy(i -> {
                    assertThat(i.part().described().least()).as(i.part().name()).isNotEmpty();
                    assertThat(i.part().described().most()).as(i.part().name()).isNotEmpty();
                }));
    }

    @TestFactory
    Stream<DynamicTest> what_is_needed_and_missing_is_named() {
        return forEachKind(kind -> {
            List<String> needed = Inputs.of(kind).stream()
                    .map(Inputs.Input::part)
                    .filter(p -> p.usual() == null && !p.optional())
                    .map(Part::name)
                    .toList();
            switch (Inputs.work(kind, java.util.Map.of())) {
                case Worked.Done done -> assertThat(needed).isEmpty();
                case Worked.Refused refused ->
                    assertThat(refused.faults().stream()
                                    .filter(f -> f.problem().equals("is missing"))
                                    .map(InputFault::input)
                                    .toList())
                            .isEqualTo(needed);
            }
        });
    }

    private interface Claim {
        void check(Kind<?> kind);
    }

    private static Stream<DynamicTest> forEachKind(Claim claim) {
        return Catalogue.all().stream().map(kind -> DynamicTest.dynamicTest(kind.key(), () -> claim.check(kind)));
    }
}
