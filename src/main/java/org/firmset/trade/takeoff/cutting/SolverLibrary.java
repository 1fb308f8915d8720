package org.firmset.trade.takeoff.cutting;

import com.google.ortools.Loader;

/** The solver's native library. Thread-safe. */
public final class SolverLibrary {
    private static volatile boolean wanted = true;

    private SolverLibrary() {}

    /** Loads when it is first asked for: half a second that nobody waits for who does not need it. */
    private static final class Loaded {
        static final boolean DONE = load();

        private static boolean load() {
            try {
                Loader.loadNativeLibraries();
                return true;
            } catch (LinkageError | RuntimeException e) {
                // no library for this kind of machine, or it may not be unpacked: what does without it still serves
                return false;
            }
        }
    }

    /** Whether it is there and wanted; looked for once. */
    public static boolean isThere() {
        return wanted && Loaded.DONE;
    }

    /** For those who want to do without it, as on a machine with little memory. */
    public static void want(boolean isWanted) {
        wanted = isWanted;
    }
}
