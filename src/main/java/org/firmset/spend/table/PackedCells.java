package org.firmset.spend.table;

import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;

/** The cells of a row in one text: a table of many thousand rows takes little more memory than its file. */
final class PackedCells extends AbstractList<String> implements RandomAccess {
    private final String text;
    private final int[] ends;

    PackedCells(List<String> cells) {
        text = String.join("", cells);
        ends = new int[cells.size()];
        int end = 0;
        for (int i = 0; i < ends.length; i++) {
            end += cells.get(i).length();
            ends[i] = end;
        }
    }

    @Override
    public String get(int index) {
        return text.substring(index == 0 ? 0 : ends[index - 1], ends[index]);
    }

    @Override
    public int size() {
        return ends.length;
    }
}
