package org.firmset.trade.haul.splitting;

/** One run while it is being loaded: what lies where, and what every rule still has room for. */
final class Hold {
    final Counts counts;
    private final Pieces pieces;
    private final long[] left;

    Hold(Pieces pieces) {
        this(pieces, new Counts(pieces.bays()), pieces.rooms.clone());
    }

    private Hold(Pieces pieces, Counts counts, long[] left) {
        this.pieces = pieces;
        this.counts = counts;
        this.left = left;
    }

    /** How many packs more of a kind may go into a bay. */
    int most(int kind, int bay) {
        if (!pieces.goes[kind][bay]) {
            return 0;
        }
        long most = Cargo.MOST_PACKS;
        for (int r = 0; r < left.length; r++) {
            long weight = pieces.weights[r][kind][bay];
            if (weight > 0) {
                most = Math.min(most, left[r] / weight);
            }
        }
        return Math.toIntExact(most);
    }

    /** @param count under 0 to take out again; whether all rules still hold then, {@link #holds()} says */
    void put(int kind, int bay, int count) {
        counts.add(kind, bay, count);
        for (int r = 0; r < left.length; r++) {
            left[r] -= pieces.weights[r][kind][bay] * count;
        }
    }

    boolean holds() {
        for (long l : left) {
            if (l < 0) {
                return false;
            }
        }
        return true;
    }

    /** The room left under a rule, as a part of all its room. */
    double leftPart(int rule) {
        return pieces.rooms[rule] == 0 ? 0 : (double) left[rule] / pieces.rooms[rule];
    }

    boolean isEmpty() {
        return counts.present().isEmpty();
    }

    Hold copy() {
        return new Hold(pieces, counts.copy(), left.clone());
    }
}
