package org.firmset.trade.haul;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PayloadTest {
    private static Rig rig(List<String> bays, MassLimit... limits) {
        return new Rig("rig", "Rig", bays.stream().map(b -> new Bay(b, b, 1, 1)).toList(), List.of(limits));
    }

    @Test
    void a_bed_takes_what_its_limit_leaves() {
        assertThat(Payload.mostGrams(rig(List.of("bed"), new MassLimit("p", 1000, Map.of("bed", 300)))))
                .isEqualTo(3334);
        assertThat(Payload.mostGrams(rig(List.of()))).isZero();
    }

    @Test
    void a_pickup_with_its_trailer_takes_both_less_the_tongue() {
        MassLimit payload = new MassLimit("payload", 1250, Map.of("bed", 1000, "deck", 120));
        MassLimit deck = new MassLimit("deck", 2250, Map.of("deck", 1000));
        assertThat(Payload.mostGrams(rig(List.of("bed", "deck"), payload, deck)))
                .as("(1250 - 270) + 2250")
                .isEqualTo(3230);
    }

    @Test
    void a_roof_besides_does_not_loosen_it() {
        MassLimit payload = new MassLimit("payload", 1250, Map.of("bed", 1000, "deck", 120, "roof", 1000));
        MassLimit deck = new MassLimit("deck", 2250, Map.of("deck", 1000));
        MassLimit roof = new MassLimit("roof", 100, Map.of("roof", 1000));
        assertThat(Payload.mostGrams(rig(List.of("bed", "deck", "roof"), payload, deck, roof)))
                .isEqualTo(3230);
    }

    @Test
    void no_sharing_of_random_rigs_carries_more_and_of_two_bays_some_carries_as_much() {
        for (long seed = 1; seed <= 300; seed++) {
            Random random = new Random(seed);
            List<String> bays = List.of("bed", "deck", "roof").subList(0, 1 + random.nextInt(3));
            List<MassLimit> limits = new ArrayList<>();
            for (String bay : bays) {
                limits.add(new MassLimit(bay, random.nextInt(40), Map.of(bay, 1000)));
            }
            for (int l = 0; l < 1 + random.nextInt(5); l++) {
                Map<String, Integer> shares = new HashMap<>();
                bays.forEach(b -> shares.put(b, random.nextInt(4) * 400));
                limits.add(new MassLimit("limit " + l, random.nextInt(60), shares));
            }
            Rig rig = rig(bays, limits.toArray(MassLimit[]::new));
            long best = best(rig, 0, new HashMap<>());
            long bound = Payload.mostGrams(rig);
            assertThat(bound).as("seed %d: %s", seed, rig).isGreaterThanOrEqualTo(best);
            if (bays.size() <= 2) {
                // whole grams may lie under what fractions of a gram could reach
                assertThat(bound).as("seed %d: %s", seed, rig).isLessThanOrEqualTo(best + 3);
            }
        }
    }

    /** The most whole grams, every sharing tried. */
    private static long best(Rig rig, int from, Map<String, Long> grams) {
        if (from == rig.bays().size()) {
            boolean holds = rig.limits().stream()
                    .allMatch(l -> grams.entrySet().stream()
                                    .mapToLong(e -> e.getValue() * l.shareOf(e.getKey()))
                                    .sum()
                            <= l.grams() * 1000);
            return holds ? grams.values().stream().mapToLong(Long::longValue).sum() : 0;
        }
        String bay = rig.bays().get(from).id();
        long best = 0;
        for (long g = 0; g < 40; g++) {
            grams.put(bay, g);
            best = Math.max(best, best(rig, from + 1, grams));
        }
        grams.remove(bay);
        return best;
    }
}
