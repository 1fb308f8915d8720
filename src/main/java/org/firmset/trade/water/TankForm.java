package org.firmset.trade.water;

import static org.firmset.trade.trace.Term.term;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Term;

/**
 * A tank's shape in figures, in metres.
 *
 * @param top depth of the water when it is full
 * @param along longer side of its plan
 * @param across shorter side of its plan
 * @param plan area of its plan in m2
 * @param windArea what the wind sees from the side where it sees most, in m2
 * @param windArm height of the middle of that area
 * @param volume water in m3 for a depth
 */
record TankForm(
        double top,
        double along,
        double across,
        double plan,
        double windArea,
        double windArm,
        DoubleUnaryOperator volume,
        String formula,
        List<Term> terms) {

    static TankForm of(Tank tank) {
        return switch (tank.shape()) {
            case UPRIGHT_CYLINDER -> upright(tank);
            case LYING_CYLINDER -> lying(tank);
            case BOX -> box(tank);
            case CONE_BOTTOM -> coneBottom(tank);
            case NOMINAL -> nominal(tank);
        };
    }

    private static TankForm round(Tank tank, DoubleUnaryOperator volume, String formula, Term... terms) {
        double d = tank.diameter().amount();
        double h = tank.height().amount();
        return new TankForm(h, d, d, TankVolume.upright(d, 1), d * h, h / 2, volume, formula, List.of(terms));
    }

    private static TankForm upright(Tank tank) {
        double d = tank.diameter().amount();
        return round(
                tank,
                depth -> TankVolume.upright(d, depth),
                "V = pi/4 d2 h",
                term("d", "inside diameter", Amount.length(tank.diameter())),
                term("h", "inside height", Amount.length(tank.height())));
    }

    private static TankForm nominal(Tank tank) {
        double h = tank.height().amount();
        double volume = tank.nominalVolume().amount();
        return round(
                tank,
                depth -> volume * depth / h,
                "V as its maker states",
                term("d", "diameter it stands on", Amount.length(tank.diameter())),
                term("h", "height of the water", Amount.length(tank.height())));
    }

    private static TankForm lying(Tank tank) {
        double d = tank.diameter().amount();
        double l = tank.length().amount();
        return new TankForm(
                d,
                Math.max(l, d),
                Math.min(l, d),
                l * d,
                l * d,
                d / 2,
                depth -> TankVolume.lying(d, l, depth),
                "V = L (r2 acos((r - y) / r) - (r - y) sqrt(2 r y - y2)), r = d / 2, y = d",
                List.of(
                        term("d", "inside diameter", Amount.length(tank.diameter())),
                        term("L", "inside length", Amount.length(tank.length()))));
    }

    private static TankForm box(Tank tank) {
        double l = tank.length().amount();
        double w = tank.width().amount();
        double h = tank.height().amount();
        return new TankForm(
                h,
                Math.max(l, w),
                Math.min(l, w),
                l * w,
                Math.max(l, w) * h,
                h / 2,
                depth -> TankVolume.box(l, w, depth),
                "V = L w h",
                List.of(
                        term("L", "inside length", Amount.length(tank.length())),
                        term("w", "inside width", Amount.length(tank.width())),
                        term("h", "inside height", Amount.length(tank.height()))));
    }

    private static TankForm coneBottom(Tank tank) {
        double d = tank.diameter().amount();
        double h = tank.height().amount();
        double c = tank.cone().amount();
        double triangle = d * c / 2;
        double area = d * h + triangle;
        double arm = (d * h * (c + h / 2) + triangle * c * 2 / 3) / area;
        return new TankForm(
                c + h,
                d,
                d,
                TankVolume.upright(d, 1),
                area,
                arm,
                depth -> TankVolume.coneBottom(d, c, depth),
                "V = pi/4 d2 (h + c / 3)",
                List.of(
                        term("d", "inside diameter", Amount.length(tank.diameter())),
                        term("h", "height of the straight wall", Amount.length(tank.height())),
                        term("c", "height of the cone", Amount.length(tank.cone()))));
    }
}
