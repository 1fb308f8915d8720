package org.firmset.spend.table;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.firmset.homestead.file.Fault;
import org.firmset.spend.Share;

/** Who bears a cost, in one cell: "water/water-track 2; shop 1". A weight that is left out is 1. */
final class ShareText {
    private static final Pattern SHARE =
            Pattern.compile("([a-z0-9][a-z0-9-]*)(?:/([a-z0-9][a-z0-9-]*))?(?:\\s+(\\d{1,9}(?:\\.\\d{1,9})?))?");

    private ShareText() {}

    static String of(List<Share> shares) {
        return shares.stream()
                .map(s -> s.subproject() + (s.stage() == null ? "" : "/" + s.stage()) + " "
                        + s.weight().toPlainString())
                .collect(Collectors.joining("; "));
    }

    static List<Share> read(Cell cell, List<Fault> faults) {
        List<Share> shares = new ArrayList<>();
        for (String part : cell.text().split(";")) {
            Matcher matcher = SHARE.matcher(part.strip());
            if (matcher.matches()) {
                String weight = matcher.group(3);
                shares.add(new Share(
                        matcher.group(1), matcher.group(2), weight == null ? BigDecimal.ONE : new BigDecimal(weight)));
            } else if (!part.isBlank()) {
                faults.add(cell.fault(
                        "does not say who bears it",
                        "Write keys and shares such as 'water/water-track 2; shop 1', or leave this column out"));
                return List.of();
            }
        }
        return shares;
    }
}
