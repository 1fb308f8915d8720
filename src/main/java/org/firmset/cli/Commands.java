package org.firmset.cli;

import java.io.PrintStream;
import java.util.List;

/** Runs a command of the terminal and answers with the exit status: 0 done, 1 refused or no plan, 2 not understood. */
public final class Commands {
    static final int DONE = 0;
    static final int REFUSED = 1;
    static final int NOT_UNDERSTOOD = 2;

    private static final String HELP = """
            Usage: firmset [COMMAND]

              (no command)                build when needed and start; says the address to open
              plan FILE [OPTIONS]         plan the season of a homestead file and print it trip by trip
              why FILE QUESTION           plan it again to answer: finish SUBPROJECT, stage STAGE, trip YYYY-MM-DD,
                                          deliveries SUPPLIER, styles, compare STYLE, power
              loads FILE --trip N         plan it and print what trip N carries: where each pack lies, limits, shopping list
              day FILE --date D           print what a date can hold: light, sun, odds of the weather, the battery by the hour
              spend FILE [OPTIONS]        plan it and print where the money went, what comes when and where it will end
              takeoff                     list what quantities can be worked out from dimensions
              takeoff KIND                list the inputs of one kind, with their ranges and usual values
              takeoff KIND NAME=VALUE ... work it out, every line with formula and source
              bench plan [PART] [OPTIONS] measure the planner on made-up homesteads and print tables (up to an hour)
              bench takeoff               measure takeoffs, cut lists and cures and print tables
              bench haul [OPTIONS]        measure splitting loads over runs and print tables
              bench power                 measure light, sun and battery and print a table
              bench spend                 measure reading tables of receipts and print a table (--lines 500,5000)
              bench psplib FOLDER         solve open scheduling instances (.sm, .SCH, optimum.csv) and print a table
              test                        build and run every test
              mutants                     count how often the tests notice broken arithmetic (some minutes)
              --help                      this text

            Options of plan (why has --style and --date, loads and spend all but --json):
              --json OUT                  also write the plan as JSON to the file OUT ('-' prints only the JSON)
              --style STYLE               soonest (default), fewest-trips or least-money
              --proof N                   how hard to look for a proof that no plan is better, about N seconds; 0 for
                                          simple bounds only (default: 4)
              --date YYYY-MM-DD           'today' for the plan (default: the date of this machine)
              --units us|metric           units to print (default: those of the file)

            Options of loads:
              --trip N|YYYY-MM-DD         the trip, by its number in the plan or its first date
              --had MATERIAL=PACKS        say what it means that no more packs could be had; may come more than once
              --without-trailer           say what it means that the trailer stays home
              --more-people MASS          say what it means that so much more rides along ('90' is kg; or '200 lb')

            Options of day (it plans nothing):
              --date YYYY-MM-DD           the date (default: the date of this machine)
              --work STAGE=HOURS          labour to be done on it; may come more than once
              --people N                  who share the labour (default: those of the open date, or all)
              --generator MINUTES         how long the generator runs (default: 0)
              --units us|metric           units to print (default: those of the file)
            Options of spend:
              --receipts CSV              receipts in a table, such as the pages write
              --budget OUT                also write today's budget as JSON to the file OUT ('-' prints only the JSON)
              --against FILE              say what differs from a budget that was written before, and why
              --rise PERCENT              say what a rise of all prices does to the sum at the finish
              --a-month AMOUNT            plan again with at most so much a month ('900.00 USD'), and say what it means
              --firm                      no plan may spend more than that; otherwise it is kept as far as it can be

            Options of bench plan (PART: sizes, styles, edits or growth, or several; without it all of them, and with
            options only sizes):
              --sizes LIST                stages x weekends (default: 12x16,40x40,120x100,400x200)
              --seeds N                   homesteads of each size (default: 10)
              --efforts LIST              efforts for a proof, about as many seconds each (default: 1,5,15,30)

            Options of bench haul:
              --orlib FILE                also split open bin packing instances; FILE or folder of .txt files

            Options of takeoff:
              --units us|metric           units to print (default: us)

            Surroundings:
              FIRMSET_HOME                folder of the data (default: ~/.firmset)
              FIRMSET_PORT                port of the web pages (default: 8765)
              FIRMSET_DB_URL              JDBC address of a PostgreSQL database to use in place of the embedded one
              FIRMSET_PLANNER_PLANS       plans the longer look behind the pages builds (default: 5000)
              FIRMSET_PLANNER_PROOF       how hard it looks for a proof, about so many seconds; 0 for simple bounds only
                                          (default: 4)
              FIRMSET_PLANNER_SOLVER      false to plan without the solver's library, which takes memory (default: true)
            """;

    private final PrintStream out;
    private final PrintStream err;

    public Commands(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    /** Whether these arguments are a command of the terminal; otherwise the program is to start its web pages. */
    public static boolean holds(List<String> arguments) {
        return !arguments.isEmpty()
                && (!arguments.getFirst().startsWith("--")
                        || arguments.getFirst().equals("--help"));
    }

    public int run(List<String> arguments) {
        try {
            List<String> rest = arguments.subList(1, arguments.size());
            if (rest.contains("--help")) {
                return help();
            }
            return switch (arguments.getFirst()) {
                case "plan" -> new PlanCommand(out, err).run(rest);
                case "why" -> new WhyCommand(out, err).run(rest);
                case "loads" -> new LoadsCommand(out, err).run(rest);
                case "day" -> new DayCommand(out, err).run(rest);
                case "spend" -> new SpendCommand(out, err).run(rest);
                case "takeoff" -> new TakeoffCommand(out, err).run(rest);
                case "bench" -> new BenchCommand(out).run(rest);
                case "help", "--help", "-h" -> help();
                default ->
                    throw new NotUnderstood(
                            "'" + arguments.getFirst() + "' is no command; 'firmset --help' lists them");
            };
        } catch (NotUnderstood e) {
            err.println("firmset: " + e.getMessage());
            return NOT_UNDERSTOOD;
        }
    }

    private int help() {
        out.print(HELP);
        return DONE;
    }
}
