package org.firmset.trade.water;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.firmset.measure.Pressure;
import org.jspecify.annotations.Nullable;

/** A water line made ready to be asked what flows. */
final class LineFlow {
    private static final double LITRES_PER_MINUTE = 60_000;

    /** How full the tank is. */
    enum Level {
        FULL("full", 1),
        HALF("half full", 0.5),
        LOW("nearly empty", 0.1);

        private final String words;
        private final double share;

        Level(String words, double share) {
            this.words = words;
            this.share = share;
        }

        String words() {
            return words;
        }

        double share() {
            return share;
        }
    }

    /**
     * What comes out of an outlet.
     *
     * @param flow in m3/s
     * @param pressure before it in pascals; 0 at a bare end
     * @param speed in its branch in m/s
     * @param reynolds in its branch
     * @param enough whether flow and pressure are what was wanted
     */
    record Drawn(Outlet outlet, double flow, double pressure, double speed, double reynolds, boolean enough) {
        double litresPerMinute() {
            return flow * LITRES_PER_MINUTE;
        }
    }

    /** What the outlets give at a level, each open alone and all of them together. */
    record AtLevel(Level level, List<Drawn> alone, List<Drawn> together) {}

    private final WaterLine line;
    private final double density;
    private final Network network;
    private final List<Network.Branch> branches;

    LineFlow(WaterLine line) {
        this.line = line;
        double celsius = line.waterTemperature().amount();
        this.density = Water.density(celsius);
        this.network = new Network(main(line), line.law(), Water.kinematicViscosity(celsius));
        this.branches = line.outlets().all().stream().map(this::branch).toList();
    }

    static PipeRun main(WaterLine line) {
        double k = Fitting.ENTRANCE.k()
                + line.elbows() * Fitting.ELBOW.k()
                + line.tees() * Fitting.TEE_THROUGH.k()
                + line.valves() * Fitting.FULL_BORE_VALVE.k()
                + line.globeValves() * Fitting.GLOBE_VALVE.k()
                + line.checkValves() * Fitting.CHECK_VALVE.k();
        return new PipeRun(line.mainLength().amount(), line.mainBore().amount(), line.material(), k);
    }

    private Network.Branch branch(Outlet outlet) {
        double k = Fitting.TEE_BRANCH.k()
                + line.branchElbows() * Fitting.ELBOW.k()
                + line.branchValves() * Fitting.FULL_BORE_VALVE.k();
        double bore = line.branchBore().amount();
        PipeRun run = new PipeRun(outlet.branch().amount(), bore, line.material(), k);
        @Nullable Rating said = outlet.rating();
        @Nullable Rating rating = said == null ? line.fixture().rating() : said;
        return new Network.Branch(run, outlet.drop().amount(), Opening.of(rating, bore, density));
    }

    PipeRun main() {
        return network.main();
    }

    double density() {
        return density;
    }

    double viscosity() {
        return network.viscosity();
    }

    double depth(Level level) {
        return line.waterDepth().amount() * level.share();
    }

    double leastPressure() {
        @Nullable Pressure wanted = line.leastPressure();
        return wanted == null ? line.fixtureGroup().leastPressure() : wanted.amount();
    }

    /** For each level, the full tank first. */
    List<AtLevel> levels() {
        return Stream.of(Level.values())
                .map(level -> new AtLevel(level, alone(level), together(level)))
                .toList();
    }

    private List<Drawn> together(Level level) {
        return drawn(line.outlets().all(), branches, level);
    }

    private List<Drawn> alone(Level level) {
        List<Drawn> each = new ArrayList<>();
        for (int i = 0; i < branches.size(); i++) {
            each.addAll(drawn(List.of(line.outlets().all().get(i)), List.of(branches.get(i)), level));
        }
        return each;
    }

    private List<Drawn> drawn(List<Outlet> outlets, List<Network.Branch> open, Level level) {
        double[] flows = network.flows(depth(level), open);
        List<Drawn> drawn = new ArrayList<>();
        for (int i = 0; i < flows.length; i++) {
            drawn.add(drawn(outlets.get(i), open.get(i), flows[i]));
        }
        return drawn;
    }

    private Drawn drawn(Outlet outlet, Network.Branch branch, double flow) {
        Opening opening = branch.opening();
        double pressure = opening.hasPressure() ? Water.pressure(opening.head(flow), density) : 0;
        double bore = branch.run().bore();
        boolean enough = flow * LITRES_PER_MINUTE >= line.leastFlow().amount()
                && (!opening.hasPressure() || pressure >= leastPressure());
        return new Drawn(
                outlet,
                flow,
                pressure,
                Friction.velocity(flow, bore),
                Friction.reynolds(flow, bore, viscosity()),
                enough);
    }

    static double total(List<Drawn> drawn) {
        return drawn.stream().mapToDouble(Drawn::flow).sum();
    }

    /** Pressure in pascals at an outlet that is shut, as all others are. */
    double staticPressure(Outlet outlet, Level level) {
        return Water.pressure(depth(level) + outlet.drop().amount(), density);
    }
}
