package org.firmset.season.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.firmset.season.load.LoadWords;
import org.firmset.season.load.TripLoads;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.LimitKind;
import org.firmset.trade.haul.LoadLimit;
import org.firmset.trade.haul.LoadSheet;
import org.firmset.trade.haul.Outfit;
import org.firmset.trade.haul.Stowed;
import org.firmset.trade.haul.Zone;
import org.jspecify.annotations.Nullable;

/**
 * Draws a loaded outfit from the side, its lengths to scale: each zone as a box as high as it is full, with its mass above;
 * under each axle a bar that is filled as far as its rating is used. The tables say the same in words and figures.
 */
final class RigDrawing {
    private static final int WIDTH = 960;
    private static final int EDGE = 8;
    private static final int MASSES = 16;
    private static final int TALLEST = 74;
    private static final int FLOOR = 112;
    private static final int GROUND = 160;
    private static final int BARS = 192;
    private static final int BAR_WIDTH = 150;
    private static final int BAR = 12;
    private static final int ROW = 48;
    private static final int HEIGHT = BARS + ROW + 52;
    private static final double LONG_THING = 12;
    private static final double READABLE = 10;

    private final TripLoads.OwnRun run;
    private final Outfit outfit;
    private final LoadSheet sheet;
    private final LoadWords words;
    private final RigMeasures rig;
    private final double scale;
    private final StringBuilder svg = new StringBuilder();

    RigDrawing(TripLoads.OwnRun run, LoadWords words) {
        this.run = run;
        this.words = words;
        outfit = run.outfit();
        sheet = run.placement().sheet();
        rig = RigMeasures.of(outfit);
        long over = run.placement().stowed().stream()
                .mapToLong(s -> rig.frontOf(outfit, s.cargo().bay()) + s.from() + s.length() + s.overRear())
                .max()
                .orElse(0);
        scale = (WIDTH - 2.0 * EDGE) / Math.max(rig.end(), over);
    }

    String svg() {
        ground();
        vehicle();
        trailer();
        run.placement().zones().forEach(this::zone);
        longThings();
        bars();
        return Svg.framed("fs-rig", WIDTH, HEIGHT, label(), svg);
    }

    private double x(double millimetres) {
        return EDGE + millimetres * scale;
    }

    private void ground() {
        svg.append(Svg.format("<path class=\"fs-grid\" d=\"M%d %d H%d\"/>", EDGE, GROUND, WIDTH - EDGE));
    }

    private void vehicle() {
        double cab = x(rig.bedFront() - 150.0);
        double hood = x(rig.nose() + (rig.bedFront() - rig.nose()) * 0.42);
        double roof = hood + (cab - hood) * 0.28;
        svg.append(Svg.format(
                "<path class=\"fs-outline\" d=\"M%.1f %d V%d L%.1f %d L%.1f %d H%.1f V%d H%.1f V%d Z\"/>",
                x(rig.nose()),
                FLOOR + 24,
                FLOOR - 10,
                hood,
                FLOOR - 18,
                roof,
                FLOOR - 62,
                cab,
                FLOOR,
                x(rig.tail()),
                FLOOR + 24));
        wheel(rig.frontAxle());
        wheel(rig.rearAxle());
    }

    private void trailer() {
        Long hitch = rig.hitch();
        Long front = rig.deckFront();
        Long length = rig.deckLength();
        if (hitch == null || front == null || length == null) {
            return;
        }
        svg.append(Svg.format(
                "<path class=\"fs-outline\" d=\"M%.1f %d L%.1f %d\"/><rect class=\"fs-outline\" x=\"%.1f\" y=\"%d\""
                        + " width=\"%.1f\" height=\"12\"/><circle class=\"fs-ball\" cx=\"%.1f\" cy=\"%d\" r=\"4\"/>",
                x(hitch), FLOOR + 18, x(front), FLOOR + 6, x(front), FLOOR, length * scale, x(hitch), FLOOR + 18));
        wheel(rig.trailerAxle());
    }

    private void wheel(@Nullable Long axle) {
        if (axle != null) {
            svg.append(Svg.format(
                    "<circle class=\"fs-wheel\" cx=\"%.1f\" cy=\"%d\" r=\"24\"/><circle class=\"fs-ball\" cx=\"%.1f\""
                            + " cy=\"%d\" r=\"3\"/>",
                    x(axle), GROUND - 24, x(axle), GROUND - 24));
        }
    }

    /** Of a roof the floor lies higher. */
    private int floorOf(String bay) {
        return LoadWords.bay(outfit, bay).equals("roof") ? FLOOR - 64 : FLOOR;
    }

    private void zone(Zone zone) {
        double left = x(rig.frontOf(outfit, zone.bay()) + zone.fromMillimetres());
        double width = zone.lengthMillimetres() * scale;
        boolean roof = LoadWords.bay(outfit, zone.bay()).equals("roof");
        int floor = floorOf(zone.bay());
        double full = zone.roomMillilitres() == 0 ? 0 : (double) zone.millilitres() / zone.roomMillilitres();
        double height = zone.grams() == 0 ? 0 : Math.max(roof ? 5 : 16, Math.min(1, full) * (roof ? 14 : TALLEST));
        svg.append(Svg.format(
                "<g><title>%s</title><path class=\"fs-zone\" d=\"M%.1f %d V%d H%.1f V%d\"/>",
                Svg.escaped(told(zone)), left, floor, floor - (roof ? 14 : TALLEST), left + width, floor));
        if (zone.grams() > 0) {
            text(left + width / 2, roof ? floor - 18 : MASSES, Svg.cut(words.mass(zone.grams()), width + 8));
        }
        if (!zone.packs().isEmpty()) {
            svg.append(Svg.format(
                    "<rect class=\"fs-piece\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\"/>",
                    left + 1.5, floor - height, width - 3, height));
            if (!roof) {
                text(left + width / 2, floor - 4, Svg.cut(numbers(zone), width));
            }
        }
        svg.append("</g>");
    }

    private String numbers(Zone zone) {
        return run.items().stream()
                .filter(i -> zone.packs().stream().anyMatch(s -> s.cargo().equals(i.cargo())))
                .map(i -> Integer.toString(i.off()))
                .collect(Collectors.joining(" "));
    }

    private String told(Zone zone) {
        int zones = Math.toIntExact(run.placement().zones().stream()
                .filter(z -> z.bay().equals(zone.bay()))
                .count());
        return "%s, %s: %s"
                .formatted(
                        LoadWords.bay(outfit, zone.bay()),
                        LoadWords.zone(zone.number(), zones),
                        words.mass(zone.grams()));
    }

    /** What lies across zones is drawn over them, with what sticks out. */
    private void longThings() {
        for (Bay bay : outfit.bays()) {
            List<Stowed> here = run.placement().across().stream()
                    .filter(s -> s.cargo().bay().equals(bay.id()))
                    .toList();
            double each = Math.min(LONG_THING, (TALLEST - 4.0) / Math.max(1, here.size()));
            double y = floorOf(bay.id()) - TALLEST + 1.0;
            for (Stowed stowed : here) {
                longThing(stowed, y, each - 1.5);
                y += each;
            }
        }
    }

    private void longThing(Stowed stowed, double y, double height) {
        double from = rig.frontOf(outfit, stowed.cargo().bay()) + stowed.from() - (double) stowed.overFront();
        double length = stowed.length() + (double) stowed.overFront() + stowed.overRear();
        svg.append(Svg.format(
                "<rect class=\"fs-long\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\"/>",
                x(from), y, length * scale, height));
        if (height >= READABLE) {
            run.items().stream()
                    .filter(i -> i.cargo().equals(stowed.cargo()))
                    .forEach(i -> svg.append(Svg.format(
                            "<text class=\"fs-small\" x=\"%.1f\" y=\"%.1f\">%d</text>",
                            x(from) + 4, y + height - 2, i.off())));
        }
    }

    private void bars() {
        bar(rig.frontAxle(), LimitKind.FRONT_AXLE, 0);
        bar(rig.rearAxle(), LimitKind.REAR_AXLE, 0);
        bar(rig.trailerAxle(), LimitKind.TRAILER_AXLE, 0);
        bar(rig.hitch(), LimitKind.TONGUE_RATING, 1);
        bar((rig.nose() + rig.tail()) / 4, LimitKind.PAYLOAD, 1);
        if (rig.deckFront() != null) {
            bar(rig.end() - 1L, LimitKind.TRAILER_RATING, 1);
        }
    }

    private void bar(@Nullable Long at, LimitKind kind, int row) {
        Optional<LoadLimit> known = sheet.limit(kind);
        if (at == null || known.isEmpty()) {
            return;
        }
        LoadLimit limit = known.get();
        double left = Math.clamp(x(at) - BAR_WIDTH / 2.0, EDGE, WIDTH - EDGE - (double) BAR_WIDTH);
        int top = BARS + row * ROW;
        double used = limit.ratingGrams() == 0 ? 1 : (double) limit.onItGrams() / limit.ratingGrams();
        svg.append(Svg.format(
                "<text x=\"%.1f\" y=\"%d\"%s>%s</text><rect class=\"fs-rating\" x=\"%.1f\" y=\"%d\" width=\"%d\""
                        + " height=\"%d\"/><rect class=\"fs-used\" x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"%d\"/>"
                        + "<text x=\"%.1f\" y=\"%d\">%s</text>",
                left,
                top - 6,
                limit.binds() ? " class=\"fs-lane-name\"" : "",
                Svg.escaped(kind.words() + (limit.overGrams() > 0 ? ": over" : limit.binds() ? ": binds" : "")),
                left,
                top,
                BAR_WIDTH,
                BAR,
                left,
                top,
                Math.clamp(used, 0.0, 1.0) * BAR_WIDTH,
                BAR,
                left,
                top + BAR + 14,
                Svg.escaped(words.mass(limit.onItGrams()) + " of " + words.mass(limit.ratingGrams()))));
    }

    private void text(double middle, int y, String text) {
        svg.append(
                Svg.format("<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%s</text>", middle, y, Svg.escaped(text)));
    }

    private String label() {
        List<String> parts = new ArrayList<>();
        run.placement().zones().stream().filter(z -> z.grams() > 0).forEach(z -> parts.add(told(z)));
        List.of(LimitKind.FRONT_AXLE, LimitKind.REAR_AXLE, LimitKind.TRAILER_AXLE, LimitKind.TONGUE_RATING)
                .forEach(kind -> words.bar(sheet, kind).ifPresent(b -> parts.add(kind.words() + " " + b)));
        return "From the side, front to the left. " + String.join("; ", parts) + ".";
    }
}
