package org.firmset.homestead.part;

/** A single value that cannot be accepted. */
public final class ScalarFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String problem;
    private final String remedy;

    public ScalarFault(String problem, String remedy) {
        super(problem + ". " + remedy, null, false, false);
        this.problem = problem;
        this.remedy = remedy;
    }

    public String problem() {
        return problem;
    }

    public String remedy() {
        return remedy;
    }
}
