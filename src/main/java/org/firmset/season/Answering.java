package org.firmset.season;

import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import org.firmset.plan.Stop;
import org.firmset.season.result.PlannedHomestead;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Works at questions about plans in the background, one after the other. A new one of a homestead ends the one before. */
final class Answering {
    static final String NOT_YET = "There is no plan to ask about yet. Ask again in a moment.";
    private static final Logger LOG = LoggerFactory.getLogger(Answering.class);

    private final Function<UUID, @Nullable PlannedHomestead> shown;
    private final Map<UUID, Stop> asked = new ConcurrentHashMap<>();
    private final Background worker = new Background("answering");
    private volatile boolean ending;

    /** @param shown the plan of a homestead as it is shown when its question has its turn; null for none */
    Answering(Function<UUID, @Nullable PlannedHomestead> shown) {
        this.shown = shown;
    }

    /**
     * @param otherwise what is answered with a sentence that says why there is no answer
     * @param answered is told on another thread
     */
    <T> void begin(
            UUID homestead,
            BiFunction<PlannedHomestead, Stop, T> work,
            Function<String, T> otherwise,
            Consumer<T> answered) {
        Stop stop = new Stop();
        Stop before = asked.put(homestead, stop);
        if (before != null) {
            before.stop();
        }
        worker.begin(() -> {
            T answer = answer(homestead, work, otherwise, stop);
            if (!ending) {
                answered.accept(answer);
            }
        });
    }

    private <T> T answer(
            UUID homestead, BiFunction<PlannedHomestead, Stop, T> work, Function<String, T> otherwise, Stop stop) {
        PlannedHomestead planned = shown.apply(homestead);
        if (planned == null) {
            return otherwise.apply(NOT_YET);
        }
        try {
            T answer = work.apply(planned, stop);
            return stop.isStopped() ? otherwise.apply("Another question came before the answer. Ask again.") : answer;
        } catch (RuntimeException e) {
            LOG.error("A question about the plan of homestead {} was not answered", homestead, e);
            return otherwise.apply("No answer could be found by a mistake of the program. The plan itself is safe.");
        }
    }

    /** Nothing is answered any more. */
    void end() {
        ending = true;
        asked.values().forEach(Stop::stop);
        worker.end();
    }

    /** Whether what was under way is over. */
    boolean isOver(long seconds) throws InterruptedException {
        return worker.isOver(seconds);
    }
}
