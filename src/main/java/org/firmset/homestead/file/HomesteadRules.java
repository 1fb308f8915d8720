package org.firmset.homestead.file;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.money.Monetary;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.MonthNormal;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;

/** What must hold between the parts of a homestead besides the limits of each part. */
public final class HomesteadRules {
    private static final int[] LONGEST_MONTH = {31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

    private final Homestead homestead;
    private final List<Fault> faults = new ArrayList<>();

    private HomesteadRules(Homestead homestead) {
        this.homestead = homestead;
    }

    /** What is wrong between the parts, up to fifty faults; empty when the homestead is sound. */
    public static List<Fault> faults(Homestead homestead) {
        HomesteadRules rules = new HomesteadRules(homestead);
        rules.checkMoney();
        rules.checkPlace();
        List<Fault> references = References.faults(homestead);
        rules.faults.addAll(references);
        rules.faults.addAll(Stream.of(
                        CalendarRules.faults(homestead),
                        StageRules.faults(homestead),
                        KitRules.faults(homestead),
                        SkyRules.faults(homestead.place()),
                        PowerRules.faults(homestead),
                        ToolTimeRules.faults(homestead),
                        DeliveryRules.faults(homestead),
                        TakeoffRules.faults(homestead),
                        BudgetRules.faults(homestead))
                .flatMap(List::stream)
                .toList());
        if (references.isEmpty()) {
            rules.faults.addAll(WaitRules.faults(homestead));
        }
        return rules.faults.stream().limit(Fault.MOST).toList();
    }

    private void checkMoney() {
        String currency = homestead.currency();
        if (!currency.matches("[A-Z]{3}") || !Monetary.isCurrencyAvailable(currency)) {
            faults.add(new Fault(
                    "/currency", currency, "is not a currency", "Write its ISO 4217 code such as USD or EUR"));
            return;
        }
        Walk.through(homestead, "", (owner, part, value, pointer) -> {
            if (value instanceof Money money
                    && !money.getCurrency().getCurrencyCode().equals(currency)) {
                faults.add(new Fault(
                        pointer,
                        Cash.text(money),
                        "is not in the homestead's currency",
                        "Write all amounts in " + currency + ", or change /currency"));
            }
        });
    }

    private void checkPlace() {
        String zone = homestead.place().timeZone();
        try {
            ZoneId.of(zone);
        } catch (DateTimeException e) {
            faults.add(new Fault(
                    "/place/timeZone", zone, "is not a time zone", "Write an IANA name such as America/Denver"));
        }
        List<MonthNormal> climate = homestead.place().climate();
        if (!climate.isEmpty() && climate.size() != 12) {
            faults.add(new Fault(
                    "/place/climate",
                    climate.size() + " months",
                    "does not hold twelve months",
                    "Write all twelve from January on, or none"));
            return;
        }
        for (int i = 0; i < climate.size(); i++) {
            checkMonth(climate.get(i), i, "/place/climate/" + i);
        }
    }

    private void checkMonth(MonthNormal month, int index, String pointer) {
        if (month.meanLow().value().compareTo(month.meanHigh().value()) > 0) {
            faults.add(new Fault(
                    pointer + "/meanLow",
                    month.meanLow().toString(),
                    "is over the mean high " + month.meanHigh(),
                    "Write the lower of the two here"));
        }
        if (month.wetDays().doubleValue() > LONGEST_MONTH[index]) {
            faults.add(new Fault(
                    pointer + "/wetDays",
                    month.wetDays().toPlainString(),
                    "is more days than the month has",
                    "The most is " + LONGEST_MONTH[index]));
        }
    }
}
