package org.firmset.trade.cure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What speaks against placing on a day, and what to do about it. */
final class PourReasons {
    private final PourCase day;
    private final List<Reason> reasons = new ArrayList<>();

    private PourReasons(PourCase day) {
        this.day = day;
    }

    static List<Reason> of(PourCase day) {
        PourReasons found = new PourReasons(day);
        switch (day.given().work()) {
            case CONCRETE -> found.concrete();
            case MASONRY -> found.masonry();
        }
        found.rain();
        return List.copyOf(found.reasons);
    }

    private void protect(String why, String measure) {
        reasons.add(new Reason(Verdict.PROTECT, why, measure));
    }

    private void noGo(String why, String measure) {
        reasons.add(new Reason(Verdict.NO_GO, why, measure));
    }

    private void concrete() {
        if (day.concrete() > HotWeather.GREATEST_CONCRETE_CELSIUS) {
            noGo(
                    "the concrete is too hot",
                    "Over 35 °C (95 °F) it is only for a mix that was qualified for it (ACI 305.1-14). Cool the water,"
                            + " shade the aggregate, or pour in the small hours.");
        }
        if (day.evaporation() > Evaporation.LIMIT) {
            protect(
                    "the surface dries too fast",
                    "Break the wind, shade and fog the surface, and cover it between the steps of finishing until"
                            + " curing starts; it cracks otherwise.");
        }
        cold();
    }

    private void cold() {
        if (day.isCold() && day.concrete() < day.leastConcrete()) {
            noGo(
                    "the concrete is too cold",
                    "Parts like this are placed at %s or more in cold weather. Warm water and aggregate, or wait."
                            .formatted(Words.celsius(day.leastConcrete())));
        }
        if (day.isCold()) {
            protect(
                    "it gets cold while the concrete is young",
                    "Hold it at %s or more for %s with insulation that touches it, edges and corners too."
                                    .formatted(Words.celsius(day.leastConcrete()), Words.days(day.protectionDays()))
                            + " The exhaust of heaters belongs outdoors: it kills people and spoils fresh surfaces.");
        }
        if (day.coldest() < 0) {
            protect(
                    "there is frost while the concrete is young",
                    "Nothing is poured on frozen ground or into icy forms. Concrete that freezes before it has about"
                            + " 3.5 MPa (500 psi) is ruined.");
        }
    }

    private void masonry() {
        if (HotWeather.isHotForMasonry(day.air(), day.given().wind().amount())) {
            protect(
                    "it is hot for masonry",
                    "Shade units and sand, use cool water, spread little mortar ahead of the units, and keep the wall"
                            + " damp by fog.");
        }
        MasonryCold now = MasonryCold.of(day.air());
        if (now != MasonryCold.NONE) {
            protect("it is cold for masonry", "While working: " + now.duringWork() + ".");
        }
        if (now.asksForWindbreak(day.given().wind().amount())) {
            protect("the wind is too cold", "Put up windbreaks.");
        }
        if (now.asksForWarmGrout()) {
            grout();
        }
        MasonryCold after = MasonryCold.of(day.mean());
        if (after != MasonryCold.NONE) {
            protect("the daily mean is cold", "For 24 hours, and for 48 with core fill: " + after.afterwards() + ".");
        }
    }

    private void grout() {
        if (day.concrete() < MasonryCold.LEAST_GROUT_CELSIUS) {
            noGo("the core fill is too cold", "Make it 21 °C (70 °F) or warmer.");
        }
        if (day.concrete() > MasonryCold.GREATEST_GROUT_CELSIUS) {
            noGo("the core fill is too hot", "Make it 49 °C (120 °F) or cooler.");
        }
    }

    private void rain() {
        @Nullable BigDecimal rain = day.given().rainHours();
        if (rain == null) {
            return;
        }
        double hours = rain.doubleValue();
        if (hours <= 0) {
            noGo("rain comes before it is finished", "Wait for a dry day, or work under a roof.");
        } else if (hours < day.hoursLike(PourCase.FIRST_HOURS)) {
            protect(
                    "rain comes in the first hours",
                    "Cover all of it as soon as it bears a sheet held off it by boards, and let the water run off"
                            + " beside it. Rain must never be worked into the surface.");
        } else if (hours < day.hoursLike(PourCase.SOFT_HOURS)) {
            protect("rain comes while it is soft", "Have sheet for all of it at hand and cover it before the rain.");
        }
    }
}
