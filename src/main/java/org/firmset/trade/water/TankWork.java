package org.firmset.trade.water;

import static org.firmset.trade.trace.Term.term;

import java.util.ArrayList;
import java.util.List;
import org.firmset.measure.Area;
import org.firmset.measure.Length;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Curve;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Table;
import org.firmset.trade.trace.Term;
import org.firmset.trade.trace.Worksheet;
import org.jspecify.annotations.Nullable;

/** What a tank holds and weighs, and whether its base bears it. */
final class TankWork {
    /** Share of the presumptive value beyond which this arithmetic must not decide; our own choice. */
    static final double NEAR_THE_LIMIT = 0.75;

    /** What conversions of units may take, a millionth of a metre or square metre. */
    private static final double FORGIVEN = 1e-6;

    private static final int MARKS = 10;

    private final Tank tank;
    private final TankForm form;
    private final Sheet sheet = new Sheet();

    private TankWork(Tank tank) {
        this.tank = tank;
        this.form = TankForm.of(tank);
    }

    static Worksheet work(Tank tank) {
        return new TankWork(tank).work();
    }

    private Worksheet work() {
        refuse();
        double full = water();
        base();
        bearing(full);
        new TankWindWork(tank, form, sheet).add();
        dipTable();
        return sheet.done();
    }

    private void refuse() {
        @Nullable Length depth = tank.waterDepth();
        if (depth != null && depth.amount() > form.top()) {
            throw new Refusal(
                    "waterDepth", depth, "is more than the tank is high inside", "Enter a depth within the tank");
        }
        if (tank.soil().presumptive() == 0) {
            throw new Refusal(
                    "soil",
                    tank.soil(),
                    "has no presumptive bearing value: it gives way under a tank",
                    "Have a licensed engineer look at the ground, or choose another place");
        }
        if (contact() > slab() + FORGIVEN) {
            @Nullable Area area = tank.contactArea();
            String remedy = "Enter a base that carries the whole tank";
            throw area == null
                    ? new Refusal("baseLength", tank.baseLength(), "makes a base smaller than the tank", remedy)
                    : new Refusal("contactArea", area, "is more than the base has", remedy);
        }
    }

    private double contact() {
        @Nullable Area area = tank.contactArea();
        return area == null ? form.plan() : area.amount();
    }

    private double slab() {
        return tank.baseLength().amount() * tank.baseWidth().amount();
    }

    /** @return mass of the full tank */
    private double water() {
        double volume = form.volume().applyAsDouble(form.top());
        double mass = volume * Water.HEAVIEST;
        double full = mass + tank.emptyMass().amount();
        sheet.add(Line.answer("volume", "Volume when full", Amount.liquid(volume))
                .by(form.formula(), form.terms().toArray(new Term[0]))
                .from(Sources.GEOMETRY));
        sheet.add(Line.step("water-mass", "Mass of the water", Amount.mass(mass))
                .by(
                        "m = rho V",
                        term("rho", "density", Amount.density(Water.HEAVIEST)),
                        term("V", "volume", Amount.liquid(volume)))
                .from(Sources.WATER_WEIGHT));
        sheet.add(Line.answer("full-mass", "Mass of the full tank", Amount.mass(full))
                .by(
                        "M = m + e",
                        term("m", "water", Amount.mass(mass)),
                        term("e", "empty tank", Amount.mass(tank.emptyMass().amount())))
                .heed("Level ground, full support under the whole bottom; fill in steps and look for settling. Never"
                        + " stand below it."));
        sheet.add(Line.material("water", "Water to fill it", Amount.liquid(volume))
                .by("V as above", term("V", "volume when full", Amount.liquid(volume))));
        @Nullable Length depth = tank.waterDepth();
        if (depth != null) {
            double now = form.volume().applyAsDouble(depth.amount());
            sheet.add(Line.answer("volume-now", "Water in it now", Amount.liquid(now))
                    .by("V of the depth", term("y", "depth", Amount.length(depth)))
                    .from(Sources.GEOMETRY));
            sheet.add(Line.step(
                            "mass-now",
                            "Mass with the water in it now",
                            Amount.mass(now * Water.HEAVIEST + tank.emptyMass().amount()))
                    .by("M = rho V + e", term("V", "water in it now", Amount.liquid(now))));
        }
        return full;
    }

    private void base() {
        double edge = tank.edge().amount();
        least("least-base-length", "Least length of the base", form.along() + 2 * edge, form.along());
        least("least-base-width", "Least width of the base", form.across() + 2 * edge, form.across());
        double longer = Math.max(tank.baseLength().amount(), tank.baseWidth().amount());
        double shorter = Math.min(tank.baseLength().amount(), tank.baseWidth().amount());
        if (longer + FORGIVEN < form.along() + 2 * edge || shorter + FORGIVEN < form.across() + 2 * edge) {
            sheet.add(Finding.warning(
                    "The base does not reach far enough beyond the tank all round; its edge may crumble and the tank's"
                            + " bottom hang over."));
        }
        double thickness = tank.baseThickness().amount();
        if (thickness > 0) {
            sheet.add(Line.material("base-concrete", "Concrete of the base slab", Amount.bulk(slab() * thickness))
                    .by(
                            "V = a b t",
                            term("a", "length", Amount.length(tank.baseLength())),
                            term("b", "width", Amount.length(tank.baseWidth())),
                            term("t", "thickness", Amount.thin(thickness)))
                    .from(Sources.GEOMETRY));
        }
    }

    private void least(String key, String name, double least, double side) {
        sheet.add(Line.answer(key, name, Amount.length(least))
                .by(
                        "a = s + 2 e",
                        term("s", "side of the tank's plan", Amount.length(side)),
                        term("e", "reach beyond the tank", Amount.length(tank.edge())))
                .from(Sources.EDGE));
    }

    private void bearing(double full) {
        double onBase = Bearing.pressure(full, contact());
        sheet.add(Line.step("pressure-on-base", "Pressure of the full tank on its base", Amount.bearing(onBase))
                .by(
                        "p = M g / A",
                        term("M", "full tank", Amount.mass(full)),
                        term("A", "area it rests on", Amount.area(contact()))));
        double slabMass =
                slab() * tank.baseThickness().amount() * tank.baseDensity().amount();
        double onGround = slabMass > 0 ? Bearing.pressure(full + slabMass, slab()) : onBase;
        sheet.add(Line.answer("pressure-on-ground", "Pressure on the ground", Amount.bearing(onGround))
                .by(
                        slabMass > 0 ? "p = (M + S) g / (a b)" : "p = M g / A",
                        term("M", "full tank", Amount.mass(full)),
                        term("S", "base slab", Amount.mass(slabMass)),
                        term("a b", "plan of the base", Amount.area(slab()))));
        share(onGround, full + slabMass);
        ground();
    }

    private void share(double onGround, double load) {
        double allowed = tank.soil().presumptive();
        sheet.add(Line.step("allowed", "Presumptive bearing value of the ground", Amount.bearing(allowed))
                .from(tank.soil().source())
                .heed("Presumed, not measured: the local building office and a look at the ground come first."));
        sheet.add(Line.answer("share", "Share of the bearing value used", Amount.percent(onGround / allowed))
                .by(
                        "s = p / q",
                        term("p", "pressure on the ground", Amount.bearing(onGround)),
                        term("q", "presumptive value", Amount.bearing(allowed))));
        if (onGround > allowed) {
            sheet.add(Finding.engineer(
                    "This is too much for this ground as it is presumed: a wider base, or another place."));
        } else if (onGround / allowed > NEAR_THE_LIMIT) {
            sheet.add(Finding.engineer("The ground carries more than 75 % of its presumptive bearing value."));
        }
        sheet.add(Line.step(
                        "least-pad",
                        "Side of a square base that just keeps to the presumptive value",
                        Amount.length(Bearing.padSide(load, allowed)))
                .by(
                        "a = sqrt(M g / q)",
                        term("M", "load on the ground", Amount.mass(load)),
                        term("q", "presumptive value", Amount.bearing(allowed))));
    }

    private void ground() {
        if (tank.onFill()) {
            sheet.add(Finding.engineer(
                    "The base stands on fill or filled block: presumptive values are for undisturbed ground."));
        }
        switch (tank.shape()) {
            case CONE_BOTTOM ->
                sheet.add(Finding.engineer(
                        "A cone-bottom tank stands on a frame or legs, which press on small areas and must be designed;"
                                + " enter the area of its feet."));
            case LYING_CYLINDER ->
                sheet.add(
                        Finding.warning("A lying tank rests on cradles and rolls off without them: enter their area and"
                                + " stance, and take the maker's cradles."));
            case UPRIGHT_CYLINDER, BOX, NOMINAL -> {}
        }
        if (tank.soil() == Soil.UNKNOWN) {
            sheet.add(Finding.note(
                    "The value for unknown ground does not hold for peat, organic clay or uncompacted fill; dig and"
                            + " look."));
        }
    }

    private void dipTable() {
        List<List<Amount>> rows = new ArrayList<>();
        List<Curve.Point> points = new ArrayList<>();
        points.add(new Curve.Point(0, 0));
        for (int i = 1; i <= MARKS; i++) {
            double depth = form.top() * i / MARKS;
            double volume = form.volume().applyAsDouble(depth);
            rows.add(List.of(Amount.length(depth), Amount.liquid(volume)));
            points.add(new Curve.Point(depth, volume));
        }
        sheet.add(new Table("Water by its depth", List.of("Depth", "Water"), rows));
        sheet.add(new Curve("Water by its depth", "depth, m", "water, m3", points, List.of()));
    }
}
