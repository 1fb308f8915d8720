package org.firmset.homestead;

import java.util.List;
import java.util.Optional;
import org.firmset.measure.Described;
import org.firmset.measure.UnitSystem;
import org.jspecify.annotations.Nullable;

/** The whole place with its subprojects, kit and calendar, as its owners describe it. */
@Described("The whole place: its subprojects, stages, materials, vehicles, power, people and open dates.")
public record Homestead(
        @Described("Name of the place.") String name,

        @Described("Units to show quantities in; the file itself may use any.")
        UnitSystem units,

        @Described("ISO 4217 code of the one currency of all amounts.")
        String currency,

        @Described("Where it is and what the weather is like there.")
        Place place,

        @Described("The drive there and what it costs.") Travel travel,
        @Described("When trips are possible.") OpenDates openDates,
        @Described("Who works here.") List<Person> people,

        @Described("Buildings and systems with their own budget, most important first.")
        List<Subproject> subprojects,

        @Described("The pieces of work.") List<Stage> stages,
        @Described("What must pass between stages.") List<Wait> waits,
        @Described("What stages use up.") List<Material> materials,
        @Described("Who sells and who delivers.") List<Supplier> suppliers,
        @Described("Tools that stages use.") List<Tool> tools,
        @Described("What people and cargo ride in.") List<Vehicle> vehicles,
        @Described("What a vehicle can tow.") List<Trailer> trailers,

        @Described("Battery, panels and generator on site; left out when there is no power.") @Nullable
        PowerKit power,

        @Described("The most that may be spent in a calendar month; left out for no limit.") @Nullable
        SpendingLimit spendingLimit,

        @Described("How budgets are reckoned; left out for no tax, no reserve and nothing besides.") @Nullable
        Budgeting budgeting,

        @Described("What keeps things dry on site.") Storage storage,
        @Described("Packs on site that are not used yet.") List<StockLot> stock,
        @Described("Decisions the plan must keep.") List<Pin> pins,

        @Described("Quantities worked out from dimensions, and the stages that take their needs from them.")
        List<Takeoff> takeoffs,

        @Described("Water on site; left out when it is no matter.") @Nullable
        WaterStore water) {

    public Homestead {
        people = List.copyOf(people);
        subprojects = List.copyOf(subprojects);
        stages = List.copyOf(stages);
        waits = List.copyOf(waits);
        materials = List.copyOf(materials);
        suppliers = List.copyOf(suppliers);
        tools = List.copyOf(tools);
        vehicles = List.copyOf(vehicles);
        trailers = List.copyOf(trailers);
        stock = List.copyOf(stock);
        pins = List.copyOf(pins);
        takeoffs = List.copyOf(takeoffs);
    }

    /** The same with other stages. */
    public Homestead withStages(List<Stage> changed) {
        return with(place, changed, takeoffs, power, spendingLimit);
    }

    /** The vehicle the trips are made with; empty when it names one that is not there. */
    public Optional<Vehicle> driven() {
        return vehicles.stream().filter(v -> v.key().equals(travel.vehicle())).findFirst();
    }

    /** The trailer that comes along, if any. */
    public Optional<Trailer> towed() {
        return trailers.stream().filter(t -> t.key().equals(travel.trailer())).findFirst();
    }

    /** The same at another place, or the same place told otherwise. */
    public Homestead withPlace(Place changed) {
        return with(changed, stages, takeoffs, power, spendingLimit);
    }

    /** The same with other takeoffs. */
    public Homestead withTakeoffs(List<Takeoff> changed) {
        return with(place, stages, changed, power, spendingLimit);
    }

    /** The same with other power; null for none. */
    public Homestead withPower(@Nullable PowerKit changed) {
        return with(place, stages, takeoffs, changed, spendingLimit);
    }

    /** The same with another limit to what is spent in a month; null for none. */
    public Homestead withSpendingLimit(@Nullable SpendingLimit changed) {
        return with(place, stages, takeoffs, power, changed);
    }

    /** How budgets are reckoned, also where nothing is written of it. */
    public Budgeting budgetingOrPlain() {
        return budgeting == null ? Budgeting.PLAIN : budgeting;
    }

    private Homestead with(
            Place newPlace,
            List<Stage> newStages,
            List<Takeoff> newTakeoffs,
            @Nullable PowerKit newPower,
            @Nullable SpendingLimit newLimit) {
        return new Homestead(
                name,
                units,
                currency,
                newPlace,
                travel,
                openDates,
                people,
                subprojects,
                newStages,
                waits,
                materials,
                suppliers,
                tools,
                vehicles,
                trailers,
                newPower,
                newLimit,
                budgeting,
                storage,
                stock,
                pins,
                newTakeoffs,
                water);
    }
}
