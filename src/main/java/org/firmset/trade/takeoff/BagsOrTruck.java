package org.firmset.trade.takeoff;

import static org.firmset.trade.trace.Term.term;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.firmset.measure.Described;
import org.firmset.measure.Mass;
import org.firmset.measure.Volume;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Table;
import org.firmset.trade.trace.Whole;
import org.firmset.trade.trace.Worksheet;

@Described(
        "Bags against a ready-mix truck: money, hours, and the quantity from which the truck wins. Amounts in your currency.")
public record BagsOrTruck(
        @Described(value = "Concrete to place, waste included.", least = "10 L", most = "100 m3")
        Volume volume,

        @Described(value = "What a bag makes.", least = "3 L", most = "60 L", usual = "0.6 ft3")
        Volume bagYield,

        @Described(value = "Mass of a bag.", least = "5 kg", most = "60 kg", usual = "80 lb")
        Mass bagMass,

        @Described(value = "Price of a bag.", least = "0.01", most = "1000")
        BigDecimal bagPrice,

        @Described(value = "Cargo room of a run.", least = "20 kg", most = "40 t", usual = "1000 lb")
        Mass cargoRoom,

        @Described(value = "Cost of a run for bags.", least = "0", most = "10000", usual = "0")
        BigDecimal runCost,

        @Described(value = "Hours of a run with loading and unloading.", least = "0", most = "48", usual = "0")
        BigDecimal runHours,

        @Described(value = "Bags mixed and placed in an hour of labour.", least = "0.5", most = "60", usual = "5")
        BigDecimal bagsPerHour,

        @Described(value = "Price of ready-mix for the volume below.", least = "0.01", most = "100000")
        BigDecimal truckPrice,

        @Described(value = "The volume that this price is for.", least = "1 L", most = "10 m3", usual = "1 yd3")
        Volume truckPriceVolume,

        @Described(value = "Least volume that is charged.", least = "0 m3", most = "12 m3", usual = "1 yd3")
        Volume truckLeast,

        @Described(value = "Fees of a truck: drive, short load, washing out.", least = "0", most = "10000", usual = "0")
        BigDecimal truckFees,

        @Described(value = "Most a truck brings.", least = "0.5 m3", most = "12 m3", usual = "8 yd3")
        Volume truckMost,

        @Described(
                value = "Concrete placed from the truck in an hour of labour; less by wheelbarrow.",
                least = "0.03 m3",
                most = "10 m3",
                usual = "0.65 yd3")
        Volume placedPerHour,

        @Described(
                value = "What an hour of your labour is worth to you; 0 to compare money alone.",
                least = "0",
                most = "1000",
                usual = "0")
        BigDecimal hourWorth) {

    private static final int STEPS = 2000;

    public Worksheet work() {
        refuse();
        Sheet sheet = new Sheet();
        double asked = volume.amount();
        long bags = bags(asked);
        sheet.add(Line.step("bags", "Bags", Amount.packs(asked / bagYield.amount(), "bags"))
                .by(
                        "B = V / y, rounded up",
                        term("V", "volume", Amount.volume(asked)),
                        term("y", "yield of a bag", Amount.volume(bagYield.amount())))
                .from(Sources.BAG_LABELS));
        sheet.add(Line.step("runs", "Runs for the bags", Amount.count(runs(bags), "runs"))
                .by(
                        "R = B m / c, whole bags in each",
                        term("m", "mass of a bag", Amount.mass(bagMass.amount())),
                        term("c", "cargo room", Amount.mass(cargoRoom.amount()))));
        sheet.add(Line.answer("bag-cost", "Cost with bags", money(bagMoney(asked)))
                .by(
                        "B p + R k",
                        term("p", "price of a bag", money(bagPrice.doubleValue())),
                        term("k", "cost of a run", money(runCost.doubleValue()))));
        sheet.add(
                Line.answer("truck-cost", "Cost with the truck", money(truckMoney(asked)))
                        .by(
                                "max(V, v) q + n f",
                                term("v", "least volume charged", Amount.bulk(truckLeast.amount())),
                                term("q", "price of a cubic metre", money(perCubicMetre())),
                                term("n", "trucks", Amount.count(trucks(asked), "")),
                                term("f", "fees of a truck", money(truckFees.doubleValue())))
                        .heed(
                                "A truck needs a track that carries it, a place to turn and to wash out, and people enough: it does not wait."));
        sheet.add(Line.answer("bag-hours", "Hours with bags", Amount.hours(bagHours(asked)))
                .by(
                        "B / r + R h",
                        term("r", "bags an hour", Amount.number(bagsPerHour.doubleValue(), 2, "")),
                        term("h", "hours of a run", Amount.hours(runHours.doubleValue()))));
        sheet.add(Line.answer("truck-hours", "Hours with the truck", Amount.hours(truckHours(asked)))
                .by("V / g", term("g", "placed in an hour", Amount.bulk(placedPerHour.amount())))
                .from(Source.PRACTICE));
        addTurns(sheet);
        return sheet.done();
    }

    private void refuse() {
        if (cargoRoom.value().compareTo(bagMass.value()) < 0) {
            throw new Refusal("cargoRoom", cargoRoom, "does not hold one bag", "Enter at least " + bagMass);
        }
        if (truckLeast.value().compareTo(truckMost.value()) > 0) {
            throw new Refusal("truckLeast", truckLeast, "is more than a truck brings", "Enter at most " + truckMost);
        }
    }

    private void addTurns(Sheet sheet) {
        double worth = hourWorth.doubleValue();
        DoubleUnaryOperator money = v -> bagMoney(v) - truckMoney(v);
        DoubleUnaryOperator all = v -> money.applyAsDouble(v) + worth * (bagHours(v) - truckHours(v));
        OptionalDouble byMoney = turn(money);
        OptionalDouble byAll = turn(all);
        OptionalDouble byHours = turn(v -> bagHours(v) - truckHours(v));
        addTurn(sheet, "turn-money", "From here on the truck costs less", byMoney);
        addTurn(sheet, "turn-hours", "From here on the truck takes fewer hours", byHours);
        if (worth > 0) {
            addTurn(sheet, "turn-all", "From here on the truck wins with your hours counted", byAll);
        }
        boolean truck = all.applyAsDouble(volume.amount()) > 0;
        sheet.add(Line.answer("better", "For this pour", Amount.word(truck ? "the truck" : "bags")));
        sheet.add(
                Finding.note(
                        "Bags can be spread over trips at planned joints; a truck's load is placed within an hour and a"
                                + " half of the water. Ask for the least order, waiting charge and how far the chute reaches."));
        List<List<Amount>> rows = Stream.of(0.25, 0.5, 0.75, 1.0, 1.5, 2.0, 3.0)
                .map(f -> row(f * volume.amount()))
                .toList();
        sheet.add(new Table(
                "Smaller and larger pours", List.of("Volume", "Bags", "Truck", "Bags, hours", "Truck, hours"), rows));
    }

    private List<Amount> row(double v) {
        return List.of(
                Amount.bulk(v),
                money(bagMoney(v)),
                money(truckMoney(v)),
                Amount.hours(bagHours(v)),
                Amount.hours(truckHours(v)));
    }

    private void addTurn(Sheet sheet, String key, String name, OptionalDouble volume) {
        if (volume.isPresent()) {
            sheet.add(Line.answer(key, name, Amount.bulk(volume.getAsDouble()))
                    .by("least volume above which bags stay dearer, whole bags and runs counted"));
        } else {
            sheet.add(Line.answer(
                    key, name, Amount.word("never, up to " + Math.round(lastStep() * bagYield.amount()) + " m3")));
        }
    }

    /** The volume from which on the difference stays over 0, found bag by bag from the top. */
    private OptionalDouble turn(DoubleUnaryOperator difference) {
        double step = bagYield.amount();
        long lowest = -1;
        for (long i = lastStep(); i >= 1 && difference.applyAsDouble(i * step) > 0; i--) {
            lowest = i;
        }
        return lowest < 0 ? OptionalDouble.empty() : OptionalDouble.of(lowest * step);
    }

    private long lastStep() {
        return Math.max(STEPS, Whole.up(2 * volume.amount() / bagYield.amount()));
    }

    private long bags(double v) {
        return Whole.up(v / bagYield.amount());
    }

    private long runs(long bags) {
        long inRun = Whole.down(cargoRoom.amount() / bagMass.amount());
        return Math.ceilDiv(bags, inRun);
    }

    private long trucks(double v) {
        return Math.max(1, Whole.up(v / truckMost.amount()));
    }

    private double perCubicMetre() {
        return truckPrice.doubleValue() / truckPriceVolume.amount();
    }

    private double bagMoney(double v) {
        long bags = bags(v);
        return bags * bagPrice.doubleValue() + runs(bags) * runCost.doubleValue();
    }

    private double truckMoney(double v) {
        return Math.max(v, truckLeast.amount()) * perCubicMetre() + trucks(v) * truckFees.doubleValue();
    }

    private double bagHours(double v) {
        long bags = bags(v);
        return bags / bagsPerHour.doubleValue() + runs(bags) * runHours.doubleValue();
    }

    private double truckHours(double v) {
        return v / placedPerHour.amount();
    }

    private static Amount money(double amount) {
        return Amount.number(amount, 2, "");
    }
}
