package org.firmset.walls;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SliceRule;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The walls between the rooms, for any root package, so that they can be tried on a broken house as well. */
final class Walls {
    /** Which rooms a room may use besides itself. */
    static final Map<String, List<String>> ROOMS = new LinkedHashMap<>();

    static {
        ROOMS.put("measure", List.of());
        ROOMS.put("trade.trace", List.of("measure"));
        ROOMS.put("trade.climate", List.of("measure", "trade.trace"));
        ROOMS.put("trade.cure", List.of("measure", "trade.trace", "trade.climate"));
        ROOMS.put("trade.takeoff", List.of("measure", "trade.trace"));
        ROOMS.put("trade.water", List.of("measure", "trade.trace"));
        ROOMS.put("trade.haul", List.of("measure", "trade.takeoff.cutting"));
        ROOMS.put("trade.power", List.of("measure", "trade.climate"));
        ROOMS.put("plan", List.of("trade", "measure"));
        ROOMS.put("homestead", List.of("measure", "trade", "shell"));
        ROOMS.put("spend", List.of("measure", "homestead", "trade", "shell"));
        ROOMS.put("season", List.of("homestead", "spend", "plan", "trade", "measure", "shell"));
        ROOMS.put("shell", List.of("measure"));
        ROOMS.put("cli", List.of("measure", "trade", "plan", "homestead", "spend", "season"));
    }

    private static final List<String> PURE = List.of("measure", "trade", "plan");

    private final String root;

    Walls(String root) {
        this.root = root;
    }

    List<ArchRule> rules() {
        List<ArchRule> rules = new ArrayList<>();
        ROOMS.forEach((room, allowed) -> rules.add(room(room, allowed)));
        rules.add(pure());
        rules.add(onlyPagesKnowVaadin());
        rules.add(onlyPagesKnowTheFrame());
        rules.add(onlyStoresKnowPersistence());
        rules.add(onlyOneWallKnowsTheSolver());
        rules.add(checkerApart());
        rules.add(plannerApart());
        return rules;
    }

    private ArchRule room(String room, List<String> allowed) {
        List<String> packages = new ArrayList<>();
        packages.add(inside(room));
        allowed.forEach(a -> packages.add(inside(a)));
        return classes()
                .that()
                .resideInAPackage(inside(room))
                .should()
                .onlyDependOnClassesThat(new DescribedPredicate<>("are outside the house or in " + packages) {
                    @Override
                    public boolean test(JavaClass used) {
                        boolean ours = used.getPackageName().equals(root)
                                || used.getPackageName().startsWith(root + ".");
                        return !ours
                                || packages.stream()
                                        .anyMatch(p -> used.getPackageName().matches(regex(p)));
                    }
                })
                .because("data flows one way; move what both need down into a room that both may use")
                .allowEmptyShould(true);
    }

    private String inside(String room) {
        return root + "." + room + "..";
    }

    private static String regex(String pattern) {
        return pattern.substring(0, pattern.length() - 2).replace(".", "\\.") + "(\\..*)?";
    }

    private String[] insideAll(List<String> rooms) {
        return rooms.stream().map(this::inside).toArray(String[]::new);
    }

    private ArchRule pure() {
        return noClasses()
                .that()
                .resideInAnyPackage(insideAll(PURE))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "org.springframework..", "jakarta..", "org.hibernate..", "com.vaadin..", "tools.jackson..")
                .because("pure rooms know no framework; hand them records instead")
                .allowEmptyShould(true);
    }

    private ArchRule onlyPagesKnowVaadin() {
        return noClasses()
                .that()
                .resideOutsideOfPackages("..ui..", inside("shell"))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("com.vaadin..")
                .because("only ui packages and the shell know Vaadin; a view calls a service, never the reverse")
                .allowEmptyShould(true);
    }

    private ArchRule onlyPagesKnowTheFrame() {
        return noClasses()
                .that()
                .resideOutsideOfPackages("..ui..", inside("shell"))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(inside("shell"))
                .because("the frame is for pages; offer a Destination or a FrameNote from a ui package")
                .allowEmptyShould(true);
    }

    private ArchRule onlyStoresKnowPersistence() {
        return noClasses()
                .that()
                .resideOutsideOfPackages("..store..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("jakarta.persistence..", "org.hibernate..")
                .because("only store packages know persistence; ask a store for records")
                .allowEmptyShould(true);
    }

    private ArchRule onlyOneWallKnowsTheSolver() {
        return noClasses()
                .that()
                .resideOutsideOfPackages(
                        inside("plan"), inside("trade.takeoff.cutting"), inside("trade.haul.splitting"))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("com.google.ortools..")
                .because("a solver is a tool behind a small wall; ask for a plan, a cut list or a split")
                .allowEmptyShould(true);
    }

    private ArchRule checkerApart() {
        return noClasses()
                .that()
                .resideInAPackage(inside("plan.check"))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(inside("plan.search"))
                .because("a checker that shares code with the planner shares its mistakes")
                .allowEmptyShould(true);
    }

    private ArchRule plannerApart() {
        return noClasses()
                .that()
                .resideInAPackage(inside("plan.search"))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(inside("plan.check"))
                .because("the planner must not lean on its checker")
                .allowEmptyShould(true);
    }

    /** Rooms lead in no circle, nor do the packages within them. */
    List<SliceRule> noCircles() {
        return Stream.of(".(*)..", ".(**)")
                .map(part -> SlicesRuleDefinition.slices()
                        .matching(root + part)
                        .should()
                        .beFreeOfCycles())
                .toList();
    }
}
