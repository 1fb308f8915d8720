package org.firmset.cli;

import org.firmset.homestead.Cautions;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Units;
import org.firmset.season.load.LoadWords;
import org.firmset.season.load.SeasonSupplies;
import org.firmset.season.load.SupplyWords;
import org.firmset.season.load.TripLoads;
import org.firmset.season.result.SeasonReport;
import org.firmset.season.words.Dates;
import org.firmset.season.words.WordTable;

/** Prints what a trip carries as plain text. */
final class LoadsPrinter {
    private final TripLoads loads;
    private final UnitSystem units;
    private final LoadWords words;
    private final SupplyWords supplies;
    private final StringBuilder text = new StringBuilder();

    LoadsPrinter(TripLoads loads, UnitSystem units) {
        this.loads = loads;
        this.units = units;
        words = new LoadWords(units);
        supplies = new SupplyWords(units);
    }

    String text() {
        line("TRIP %d  %s to %s".formatted(loads.number(), Dates.day(loads.firstDate()), Dates.date(loads.lastDate())));
        line(LoadWords.fewest(loads.fewest()));
        loads.own().forEach(this::own);
        loads.brought().forEach(this::brought);
        line("");
        table(SupplyWords.stock(loads));
        supplies.dryRoom(loads).ifPresent(this::line);
        if (!loads.water().isEmpty()) {
            line("");
            line("Water");
            loads.water().forEach(w -> line("  " + w));
        }
        line("");
        line("Cautions");
        loads.own().stream()
                .flatMap(r -> r.placement().cautions().stream())
                .distinct()
                .forEach(c -> line("  " + c));
        if (!loads.water().isEmpty()) {
            line("  " + Cautions.WATER);
        }
        line("  " + Cautions.STANDING);
        return text.toString();
    }

    private void line(String line) {
        text.append(line.stripTrailing()).append('\n');
    }

    private void table(WordTable table) {
        text.append(TablePrinter.text(table));
    }

    private void own(TripLoads.OwnRun run) {
        line("");
        line(LoadWords.heading(run.about()));
        line(words.summary(run));
        words.tongue(run.placement().sheet()).ifPresent(this::line);
        words.toMind(run).forEach(w -> line("! " + w));
        table(words.limits(run.placement().sheet()));
        table(words.items(run));
        shopping(run.shopping());
    }

    private void brought(TripLoads.BroughtRun run) {
        line("");
        line(LoadWords.heading(run.about()));
        line(words.summary(run));
        run.about().notes().forEach(n -> line("! " + n));
        for (SeasonReport.LoadPart load : run.about().loads()) {
            line("  %s, %s".formatted(LoadWords.packs(load), Units.show(load.mass(), units)));
        }
        shopping(run.shopping());
    }

    private void shopping(SeasonSupplies.RunList list) {
        for (WordTable stop : supplies.shopping(list, loads)) {
            text.append("Buy at ").append(TablePrinter.text(stop));
        }
    }
}
