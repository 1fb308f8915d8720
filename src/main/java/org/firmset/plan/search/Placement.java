package org.firmset.plan.search;

import java.util.ArrayList;
import java.util.List;

/** Where a stage lies: its blocks in the order of days, and what they use. */
final class Placement {
    final int stage;
    final List<Block> blocks = new ArrayList<>();
    final List<Reservation> reservations = new ArrayList<>();

    Placement(int stage) {
        this.stage = stage;
    }

    int startDay() {
        return blocks.getFirst().day();
    }

    int finishDay() {
        return blocks.getLast().day();
    }

    int labour() {
        int sum = 0;
        for (Block block : blocks) {
            sum += block.quarters();
        }
        return sum;
    }
}
