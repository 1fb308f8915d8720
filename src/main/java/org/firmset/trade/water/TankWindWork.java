package org.firmset.trade.water;

import static org.firmset.trade.trace.Term.term;

import java.math.BigDecimal;
import org.firmset.measure.Length;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Sheet;
import org.jspecify.annotations.Nullable;

/** What wind does to the empty tank. */
final class TankWindWork {
    private final Tank tank;
    private final TankForm form;
    private final Sheet sheet;

    TankWindWork(Tank tank, TankForm form, Sheet sheet) {
        this.tank = tank;
        this.form = form;
        this.sheet = sheet;
    }

    void add() {
        double force = force();
        double mass = tank.emptyMass().amount();
        double friction = tank.friction().doubleValue();
        double sliding = TankWind.slidingSafety(mass, friction, force);
        double tipping = TankWind.tippingSafety(mass, width(), force, form.windArm());
        sheet.add(Line.step("sliding-safety", "Safety of the empty tank against sliding", Amount.number(sliding, 2, ""))
                .by(
                        "s = mu e g / F",
                        term("mu", "friction", Amount.number(friction, 2, "")),
                        term("e", "empty tank", Amount.mass(mass)))
                .from(Sources.STATICS));
        sheet.add(Line.step("tipping-safety", "Safety of the empty tank against tipping", Amount.number(tipping, 2, ""))
                .by(
                        "s = e g b / (2 F a)",
                        term("b", "width it stands on", Amount.length(width())),
                        term("a", "height of the force", Amount.length(form.windArm())))
                .from(Sources.STATICS));
        speed("slides-at", "Wind at which the empty tank slides", sliding);
        speed("tips-at", "Wind at which the empty tank tips", tipping);
        hold(force, mass, friction);
        if (Math.min(sliding, tipping) < TankWind.SAFETY) {
            sheet.add(Finding.engineer(
                    "The empty tank is not held 1.5 times against this wind: tie it down or leave water in it before"
                            + " the wind comes. Ground anchors and lugs must be designed."));
        }
        sheet.add(Finding.note(
                "The wind is taken in simple form: one gust, no uplift on the roof, no hills. The local code's wind"
                        + " design is stricter."));
    }

    private double force() {
        @Nullable BigDecimal given = tank.drag();
        double drag = given == null ? tank.shape().drag() : given.doubleValue();
        double force = TankWind.force(tank.wind().amount(), drag, form.windArea());
        sheet.add(Line.step("wind-force", "Force of the wind, as the weight of", Amount.mass(force / Water.GRAVITY))
                .by(
                        "F = rho v2 C A / 2",
                        term("rho", "density of air", Amount.density(TankWind.AIR)),
                        term("v", "gust", Amount.speed(tank.wind().amount())),
                        term("C", "factor of the shape", Amount.number(drag, 2, "")),
                        term("A", "area the wind sees", Amount.area(form.windArea())))
                .from(Sources.DRAG));
        return force;
    }

    private double width() {
        @Nullable Length stance = tank.stance();
        return stance == null ? form.across() : stance.amount();
    }

    private void speed(String key, String name, double safety) {
        double speed = tank.wind().amount() * Math.sqrt(safety);
        sheet.add(Line.answer(key, name, Amount.speed(speed))
                .by(
                        "v = v gust sqrt(s)",
                        term("v gust", "gust", Amount.speed(tank.wind().amount())),
                        term("s", "safety", Amount.number(safety, 2, "")))
                .from(Sources.STATICS)
                .heed("An empty tank flies or rolls; tie it down as soon as it stands."));
    }

    private void hold(double force, double mass, double friction) {
        double sliding = TankWind.massAgainstSliding(force, friction, TankWind.SAFETY);
        double tipping = TankWind.massAgainstTipping(force, width(), form.windArm(), TankWind.SAFETY);
        double down = Math.max(0, Math.max(sliding, tipping) - mass);
        sheet.add(Line.answer("tie-down", "Least force that ties it down, as the weight of", Amount.mass(down))
                .by(
                        "T = max(1.5 F / (mu g), 3 F a / (b g)) - e",
                        term("1.5 F / (mu g)", "against sliding", Amount.mass(sliding)),
                        term("3 F a / (b g)", "against tipping", Amount.mass(tipping)),
                        term("e", "empty tank", Amount.mass(mass)))
                .from(Sources.SAFETY)
                .heed("Pulled straight down and spread over all ties; lugs that bear sideways may need less. Follow the"
                        + " maker's tie-down."));
        double ballast = down / Water.HEAVIEST;
        sheet.add(Line.step("ballast", "Water left in it that does the same", Amount.liquid(ballast))
                .by(
                        "V = T / rho",
                        term("T", "tie-down", Amount.mass(down)),
                        term("rho", "density of water", Amount.density(Water.HEAVIEST))));
        if (ballast > form.volume().applyAsDouble(form.top())) {
            sheet.add(Finding.warning("Even full, the tank is not heavy enough for this wind; it must be tied down."));
        }
    }
}
