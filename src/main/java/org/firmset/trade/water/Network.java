package org.firmset.trade.water;

import java.util.List;

/**
 * A main from a tank that ends in branches, each with an open outlet. Heights are metres over the tank's outlet.
 *
 * @param viscosity kinematic, in m2/s
 */
record Network(PipeRun main, FrictionLaw law, double viscosity) {

    /** @param drop how far the outlet lies below the tank's outlet, in metres */
    record Branch(PipeRun run, double drop, Opening opening) {}

    /**
     * Flow out of each branch in m3/s while all of them are open; 0 where the end lies above what the water can reach.
     * An open end that lies higher than the head at the main's end is taken to be shut: it would draw air.
     *
     * @param depth of the water over the tank's outlet in metres
     */
    double[] flows(double depth, List<Branch> branches) {
        double lowest = branches.stream().mapToDouble(Branch::drop).max().orElseThrow();
        if (depth + lowest <= 0) {
            return new double[branches.size()];
        }
        double junction = Root.of(h -> h + main.head(total(h, branches), law, viscosity) - depth, -lowest, depth);
        return branches.stream().mapToDouble(b -> flow(junction, b)).toArray();
    }

    private double total(double junction, List<Branch> branches) {
        double total = 0;
        for (Branch branch : branches) {
            total += flow(junction, branch);
        }
        return total;
    }

    /** @param junction head at the main's end */
    private double flow(double junction, Branch branch) {
        double head = junction + branch.drop();
        if (head <= 0) {
            return 0;
        }
        return Root.of(
                q -> branch.run().head(q, law, viscosity) + branch.opening().head(q) - head,
                0,
                branch.opening().flow(head));
    }
}
