package org.firmset.trade.water;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What must hold for any water line. */
class WaterLinePropertiesTest {
    private static final long SEED = Long.getLong("firmset.seed", 2027);
    private static final int CASES = 300;
    /** As a share: what the search for the flow may leave. */
    private static final double LEFT = 1e-8;

    private record Case(Network network, double depth, List<Network.Branch> branches) {
        double[] flows() {
            return network.flows(depth, branches);
        }

        double total() {
            double total = 0;
            for (double flow : flows()) {
                total += flow;
            }
            return total;
        }

        Case withMain(PipeRun main) {
            return new Case(new Network(main, network.law(), network.viscosity()), depth, branches);
        }
    }

    private static double log(SplittableRandom random, double least, double most) {
        return Math.exp(random.nextDouble(Math.log(least), Math.log(most)));
    }

    private static PipeRun run(SplittableRandom random, double bore, PipeMaterial material) {
        return new PipeRun(log(random, 0.1, 500), bore, material, random.nextDouble(0.5, 30));
    }

    private static Case any(SplittableRandom random) {
        PipeMaterial material = List.of(PipeMaterial.values()).get(random.nextInt(PipeMaterial.values().length));
        FrictionLaw law = random.nextBoolean() ? FrictionLaw.DARCY_WEISBACH : FrictionLaw.HAZEN_WILLIAMS;
        PipeRun main = run(random, log(random, 0.01, 0.16), material);
        double bore = log(random, 0.008, 0.11);
        List<Network.Branch> branches = new ArrayList<>();
        for (int n = random.nextInt(1, 5); n > 0; n--) {
            Rating rating = random.nextBoolean() ? null : Rating.parse("2.2 gpm at 60 psi");
            branches.add(new Network.Branch(
                    run(random, bore, material), random.nextDouble(-4, 40), Opening.of(rating, bore, 999)));
        }
        double viscosity = Water.kinematicViscosity(random.nextDouble(0, 40));
        return new Case(new Network(main, law, viscosity), random.nextDouble(0.05, 5), branches);
    }

    private interface Property {
        void holds(Case given, SplittableRandom random, String said);
    }

    private static void forAll(Property property) {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < CASES; i++) {
            Case given = any(random);
            property.holds(given, random, "seed %d, case %d: %s".formatted(SEED, i, given));
        }
    }

    @Test
    void the_head_is_used_up_along_every_way_to_an_open_end() {
        forAll((given, random, said) -> {
            double[] flows = given.flows();
            double main = given.network()
                    .main()
                    .head(given.total(), given.network().law(), given.network().viscosity());
            for (int i = 0; i < flows.length; i++) {
                Network.Branch branch = given.branches().get(i);
                double head = given.depth() - main + branch.drop();
                double used = branch.run()
                                .head(
                                        flows[i],
                                        given.network().law(),
                                        given.network().viscosity())
                        + branch.opening().head(flows[i]);
                double size = Math.max(1, given.depth() + Math.abs(branch.drop()));
                assertThat(used - Math.max(0, head)).as(said).isBetween(-1e-4 * size, 1e-4 * size);
            }
        });
    }

    @Test
    void a_wider_main_never_gives_less() {
        forAll((given, random, said) -> {
            PipeRun main = given.network().main();
            PipeRun wider =
                    new PipeRun(main.length(), main.bore() * random.nextDouble(1.01, 2), main.material(), main.k());
            double before = given.total();
            assertThat(given.withMain(wider).total()).as(said).isGreaterThanOrEqualTo(before * (1 - LEFT));
        });
    }

    @Test
    void a_longer_branch_never_gets_more() {
        forAll((given, random, said) -> {
            List<Network.Branch> longer = new ArrayList<>(given.branches());
            Network.Branch first = longer.getFirst();
            PipeRun run = first.run();
            longer.set(
                    0,
                    new Network.Branch(
                            new PipeRun(run.length() * random.nextDouble(1.01, 3), run.bore(), run.material(), run.k()),
                            first.drop(),
                            first.opening()));
            double before = given.flows()[0];
            double after = new Case(given.network(), given.depth(), longer).flows()[0];
            assertThat(after).as(said).isLessThanOrEqualTo(before * (1 + LEFT) + 1e-12);
        });
    }

    @Test
    void a_lower_tank_never_gives_more() {
        forAll((given, random, said) -> {
            double lower = given.depth() * random.nextDouble(0.1, 0.99);
            double[] before = given.flows();
            double[] after = new Case(given.network(), lower, given.branches()).flows();
            for (int i = 0; i < before.length; i++) {
                assertThat(after[i]).as(said).isLessThanOrEqualTo(before[i] * (1 + LEFT) + 1e-12);
            }
        });
    }

    @Test
    void an_outlet_gets_at_least_as_much_alone() {
        forAll((given, random, said) -> {
            double[] together = given.flows();
            for (int i = 0; i < together.length; i++) {
                double alone = given.network()
                        .flows(given.depth(), List.of(given.branches().get(i)))[0];
                assertThat(together[i]).as(said).isLessThanOrEqualTo(alone * (1 + LEFT) + 1e-12);
            }
        });
    }
}
