package org.firmset.season.load;

import java.time.LocalDate;
import java.util.List;
import org.firmset.measure.Hours;
import org.firmset.plan.Load;
import org.firmset.trade.haul.splitting.Unfit;
import org.jspecify.annotations.Nullable;

/**
 * A trip after a change on the day.
 *
 * @param runs what goes into the runs of the plan, the first one now; what is needed first goes first
 * @param another what further runs could bring that the trip still allows
 * @param stays what could be had but goes into none of these
 * @param missing what the plan wanted and was not to be had
 * @param unfit what no run of this rig can carry, and why
 * @param work one for each work block of the trip, in the order of the days
 * @param words all of it in sentences
 */
public record ChangedTrip(
        String trip,
        List<List<Load>> runs,
        List<List<Load>> another,
        List<Packs> stays,
        List<Packs> missing,
        List<Unfit> unfit,
        List<Reach> work,
        List<String> words) {
    public ChangedTrip {
        runs = List.copyOf(runs);
        another = List.copyOf(another);
        stays = List.copyOf(stays);
        missing = List.copyOf(missing);
        unfit = List.copyOf(unfit);
        work = List.copyOf(work);
        words = List.copyOf(words);
    }

    /** The same told in sentences. */
    ChangedTrip withWords(List<String> sentences) {
        return new ChangedTrip(trip, runs, another, stays, missing, unfit, work, sentences);
    }

    /** Packs of a material, 1 or more. */
    public record Packs(String material, int packs) {}

    /** Of so many packs that the work needs so many are there. */
    public record Lack(String material, int packs, int needed) {}

    /**
     * How far a work block gets.
     *
     * @param planned labour of the block
     * @param enough labour that the materials are enough for
     * @param possible labour that can be done: {@code enough}, or none when it must not start
     * @param lacks what there is too little of, the tightest first
     * @param waitsFor id of a stage that has to be finished first and will not be; null if there is none
     */
    public record Reach(
            String stage,
            LocalDate date,
            Hours planned,
            Hours enough,
            Hours possible,
            List<Lack> lacks,
            @Nullable String waitsFor) {
        public Reach {
            lacks = List.copyOf(lacks);
        }

        public boolean inFull() {
            return possible.equals(planned);
        }
    }
}
