package org.firmset.spend.table;

import java.util.AbstractList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.firmset.homestead.file.Fault;
import org.firmset.spend.Receipt;

/**
 * What a table would bring, for people to look at. All or nothing: with a fault there is nothing to take.
 *
 * @param receipts what could be read, each made again from the table whenever it is asked for; not complete when there
 *     are faults
 * @param faults the first fifty, by line
 * @param duplicates which of the receipts may be there already
 * @param sameFile this very file was taken in before
 */
public record ImportPreview(List<Receipt> receipts, List<Fault> faults, List<Duplicate> duplicates, boolean sameFile) {
    public ImportPreview {
        faults = List.copyOf(faults);
        duplicates = List.copyOf(duplicates);
    }

    /** All receipts, duplicates included; empty when anything is wrong. */
    public Optional<List<Receipt>> all() {
        return faults.isEmpty() ? Optional.of(receipts) : Optional.empty();
    }

    /** All receipts but the duplicates; empty when anything is wrong. */
    public Optional<List<Receipt>> fresh() {
        Set<Integer> known = new HashSet<>();
        duplicates.forEach(d -> known.add(d.index()));
        return all().map(r -> without(known));
    }

    /** The receipts but these, by their places among all; made again like those. */
    public List<Receipt> without(Set<Integer> places) {
        int[] chosen = IntStream.range(0, receipts.size())
                .filter(i -> !places.contains(i))
                .toArray();
        return new AbstractList<>() {
            @Override
            public Receipt get(int index) {
                return receipts.get(chosen[index]);
            }

            @Override
            public int size() {
                return chosen.length;
            }
        };
    }
}
