package org.firmset.trade.trace;

/** An input that makes no sense; says which, what it was, what is wrong and what to enter instead. */
public final class Refusal extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String input;
    private final String problem;
    private final String remedy;

    /**
     * @param input name of the input's component
     * @param value what it was
     */
    public Refusal(String input, Object value, String problem, String remedy) {
        super(input + " [" + value + "] " + problem + ". " + remedy + ".");
        this.input = input;
        this.problem = problem;
        this.remedy = remedy;
    }

    public String input() {
        return input;
    }

    public String problem() {
        return problem;
    }

    public String remedy() {
        return remedy;
    }
}
