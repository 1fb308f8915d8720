package org.firmset.homestead.store;

import java.util.List;
import java.util.function.Function;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Material;
import org.firmset.homestead.OpenRule;
import org.firmset.homestead.Person;
import org.firmset.homestead.Stage;
import org.firmset.homestead.Subproject;
import org.firmset.homestead.Supplier;
import org.firmset.homestead.Takeoff;
import org.firmset.homestead.Tool;
import org.firmset.homestead.Trailer;
import org.firmset.homestead.Vehicle;
import org.firmset.homestead.Wait;
import org.jspecify.annotations.Nullable;

/**
 * One list of a homestead and the rows that keep it.
 *
 * @param keys the key of a record; null where records have none and are told apart by their position
 */
record Part<T, R extends Row<T>>(
        Kind kind,
        Class<R> type,
        Maker<T, R> maker,
        Function<Homestead, List<T>> records,
        @Nullable Function<T, String> keys) {

    /** All parts, what is named by others before what names it: the order in which rows can be added. */
    static final List<Part<?, ?>> ALL = List.of(
            new Part<>(Kind.PERSON, PersonRow.class, PersonRow::new, Homestead::people, Person::key),
            new Part<>(Kind.TOOL, ToolRow.class, ToolRow::new, Homestead::tools, Tool::key),
            new Part<>(Kind.MATERIAL, MaterialRow.class, MaterialRow::new, Homestead::materials, Material::key),
            new Part<>(Kind.VEHICLE, VehicleRow.class, VehicleRow::new, Homestead::vehicles, Vehicle::key),
            new Part<>(Kind.TRAILER, TrailerRow.class, TrailerRow::new, Homestead::trailers, Trailer::key),
            new Part<>(
                    Kind.SUBPROJECT, SubprojectRow.class, SubprojectRow::new, Homestead::subprojects, Subproject::key),
            new Part<>(Kind.STAGE, StageRow.class, StageRow::new, Homestead::stages, Stage::key),
            new Part<>(Kind.WAIT, WaitRow.class, WaitRow::new, Homestead::waits, Wait::key),
            new Part<>(Kind.SUPPLIER, SupplierRow.class, SupplierRow::new, Homestead::suppliers, Supplier::key),
            new Part<>(
                    Kind.OPEN_RULE,
                    OpenRuleRow.class,
                    OpenRuleRow::new,
                    homestead -> homestead.openDates().rules(),
                    OpenRule::key),
            new Part<>(
                    Kind.ADDED_DATE,
                    AddedDateRow.class,
                    AddedDateRow::new,
                    homestead -> homestead.openDates().added(),
                    null),
            new Part<>(Kind.STOCK_LOT, StockLotRow.class, StockLotRow::new, Homestead::stock, null),
            new Part<>(Kind.PIN, PinRow.class, PinRow::new, Homestead::pins, null),
            new Part<>(Kind.TAKEOFF, TakeoffRow.class, TakeoffRow::new, Homestead::takeoffs, Takeoff::key));

    Slot slot(HomesteadRow homestead, T record, int position) {
        String key = keys == null ? Integer.toString(position) : keys.apply(record);
        return new Slot(kind, homestead, key, position);
    }

    @FunctionalInterface
    interface Maker<T, R> {
        R make(Slot slot, T record, Named named);
    }
}
