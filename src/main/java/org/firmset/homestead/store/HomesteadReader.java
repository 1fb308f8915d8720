package org.firmset.homestead.store;

import static java.util.Objects.requireNonNull;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.OpenDates;

/** Makes the record of one homestead from its rows. */
final class HomesteadReader {
    private final Rows rows;
    private final Map<Class<?>, List<? extends Row<?>>> lists = new HashMap<>();

    HomesteadReader(Rows rows) {
        this.rows = rows;
        // in this order what is named is there already when something names it, and costs no further query
        Part.ALL.forEach(part -> lists.put(part.type(), rows.of(part.type())));
    }

    Homestead read() {
        HomesteadRow homestead = rows.homestead();
        return new Homestead(
                homestead.name(),
                homestead.units(),
                homestead.currency(),
                homestead.place(),
                requireNonNull(rows.travel()).toRecord(),
                new OpenDates(
                        records(OpenRuleRow.class),
                        records(AddedDateRow.class),
                        homestead.removedDates(),
                        homestead.routine()),
                records(PersonRow.class),
                records(SubprojectRow.class),
                records(StageRow.class),
                records(WaitRow.class),
                records(MaterialRow.class),
                records(SupplierRow.class),
                records(ToolRow.class),
                records(VehicleRow.class),
                records(TrailerRow.class),
                homestead.power(),
                homestead.spendingLimit(),
                homestead.budgeting(),
                homestead.storage(),
                records(StockLotRow.class),
                records(PinRow.class),
                records(TakeoffRow.class),
                homestead.water());
    }

    private <T, R extends Row<T>> List<T> records(Class<R> type) {
        return requireNonNull(lists.get(type)).stream()
                .map(type::cast)
                .map(Row::toRecord)
                .toList();
    }
}
