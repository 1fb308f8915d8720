package org.firmset.homestead.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.upload.Upload;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Place;
import org.firmset.homestead.SkyRecords;
import org.firmset.homestead.file.Fault;
import org.firmset.homestead.store.Changes;
import org.firmset.homestead.store.Kept;
import org.firmset.trade.climate.ClimateTable;
import org.firmset.trade.climate.ForecastTable;
import org.firmset.trade.climate.TableFault;

/** Takes monthly normals or a forecast from a table, whole or not at all. */
class SkyImport extends Div {
    private static final int LONGEST_UPLOAD = 1 << 20;

    private final Changes changes;
    private final Kept kept;
    private final Clock clock;
    private final Runnable stored;
    private final FaultList faults = new FaultList();

    /** @param stored what to do when the homestead was changed */
    SkyImport(Changes changes, Kept kept, Clock clock, Runnable stored) {
        this.changes = changes;
        this.kept = kept;
        this.clock = clock;
        this.stored = stored;
        add(
                new H3("Take normals from a file"),
                new Paragraph("A table with commas between: a header, then twelve lines"
                        + " with month, mean_high_degC (or _degF), mean_low_degC, wet_days, sun_hours, and if known rain_mm (or _in)"
                        + " and wind_m_s (or _km_h, _mph). The twelve months are replaced, or nothing is."));
        add(upload("Choose normals", this::takeNormals));
        add(
                new H3("Take a forecast from a file"),
                new Paragraph("The same with date (2027-05-01), high_degC (or _degF),"
                        + " low_degC, wet_percent, and if it says so sun_hours and wind_m_s. One line for each day, without a gap,"
                        + " none of them past. The forecast is replaced, or nothing is."));
        add(upload("Choose a forecast", this::takeForecast));
        add(faults);
    }

    private Upload upload(String words, Consumer<String> taking) {
        Upload upload = new Upload();
        upload.setAcceptedMimeTypes("text/csv", "text/plain");
        upload.setAcceptedFileExtensions(".csv", ".txt");
        upload.setMaxFileSize(LONGEST_UPLOAD);
        upload.setUploadButton(new Button(words));
        upload.setDropLabel(new Span("or drop it here"));
        OneFile.takenFrom(upload, faults, bytes -> taking.accept(new String(bytes, StandardCharsets.UTF_8)));
        return upload;
    }

    void takeNormals(String table) {
        ClimateTable.Read read = ClimateTable.read(table);
        if (refused(read.faults())) {
            return;
        }
        read.climate().map(SkyRecords::normals).ifPresent(months -> store(place -> place.withClimate(months)));
    }

    void takeForecast(String table) {
        ForecastTable.Read read = ForecastTable.read(table, LocalDate.now(clock));
        if (refused(read.faults())) {
            return;
        }
        read.forecast().map(SkyRecords::days).ifPresent(days -> store(place -> place.withForecast(days)));
    }

    private boolean refused(List<TableFault> found) {
        if (!found.isEmpty()) {
            faults.show(
                    "The table is not accepted; nothing was changed.",
                    found.stream().map(SkyImport::fault).toList());
        }
        return !found.isEmpty();
    }

    private static Fault fault(TableFault fault) {
        String where = fault.line() == 0 ? "The table" : "Line " + fault.line();
        return new Fault(
                where + (fault.column().isEmpty() ? "" : ", " + fault.column()),
                fault.value(),
                fault.problem(),
                fault.remedy());
    }

    private void store(UnaryOperator<Place> how) {
        UnaryOperator<Homestead> change = h -> h.withPlace(how.apply(h.place()));
        switch (changes.change(kept.id(), kept.version(), change)) {
            case Changes.Change.Stored done -> stored.run();
            case Changes.Change.Refused refused ->
                faults.show(
                        "This does not fit with the rest; nothing was changed.",
                        refused.faults(),
                        change.apply(kept.homestead()));
            case Changes.Change.Outdated outdated -> faults.show(outdated.message());
        }
    }
}
