package org.firmset.plan;

import java.util.List;

/** The decisions of a plan and nothing else; whether they keep the rules is for a checker to say. */
public record Schedule(List<WorkBlock> blocks, List<Run> runs, List<GeneratorUse> generator) {
    public Schedule {
        blocks = List.copyOf(blocks);
        runs = List.copyOf(runs);
        generator = List.copyOf(generator);
    }
}
