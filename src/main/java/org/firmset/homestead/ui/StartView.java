package org.firmset.homestead.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import java.time.Clock;
import java.time.LocalDate;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.HomesteadFile;
import org.firmset.homestead.file.Reading;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.homestead.store.Changes;
import org.firmset.measure.UnitSystem;
import org.firmset.shell.Frame;

/** First start: look at the demo, begin empty, or bring a file. */
@Route(value = HomesteadPages.START, layout = Frame.class)
@PageTitle("Firmset: begin")
class StartView extends Div {
    private static final int LONGEST_UPLOAD = 8 << 20;

    private final Changes changes;
    private final Clock clock;
    private final FaultList faults = new FaultList();

    StartView(Changes changes, Clock clock) {
        this.changes = changes;
        this.clock = clock;
        addClassName("fs-start");
        add(new H1("Begin"));
        add(new Paragraph("Firmset plans which trip does which work, what waits for concrete to cure, what each vehicle"
                + " carries and what it costs. It keeps everything on this computer."));
        Div ways = new Div(demo(), empty(), file());
        ways.addClassName("fs-ways");
        add(ways, faults);
    }

    private static Section way(String title, String text) {
        Section section = new Section(new H2(title), new Paragraph(text));
        section.addClassName("fs-way");
        return section;
    }

    private Section demo() {
        Section section = way(
                "Look at the demo",
                "An invented homestead with a water tank on a block base, a workshop and a cabin, dated to the coming"
                        + " season. Change anything; it is a copy.");
        Button button = new Button("Open the demo", e -> show(changes.addDemo(LocalDate.now(clock))));
        button.addThemeVariants(ButtonVariant.PRIMARY);
        section.add(button);
        return section;
    }

    private Section empty() {
        Section section = way(
                "Start empty",
                "One person, one vehicle and free weekends for half a year. Then describe your own place, piece by"
                        + " piece.");
        TextField name = new TextField("Name of the place");
        name.setRequiredIndicatorVisible(true);
        Button metric = new Button("Start in metric units", e -> beginEmpty(name, UnitSystem.METRIC));
        Button us = new Button("Start in US units", e -> beginEmpty(name, UnitSystem.US));
        section.add(name, metric, us);
        return section;
    }

    private void beginEmpty(TextField name, UnitSystem units) {
        boolean named = !name.getValue().isBlank();
        name.setInvalid(!named);
        name.setErrorMessage("Write what you call the place");
        if (named) {
            begin(SeedHomesteads.empty(name.getValue().strip(), units, LocalDate.now(clock)));
        }
    }

    private Section file() {
        Section section = way(
                "Bring a file",
                "A homestead file that you exported before, or that somebody sent you. It is taken whole or not at all.");
        Upload upload = new Upload();
        upload.setAcceptedMimeTypes("application/json");
        upload.setAcceptedFileExtensions(".json");
        upload.setMaxFileSize(LONGEST_UPLOAD);
        upload.setUploadButton(new Button("Choose a file"));
        upload.setDropLabel(new Span("or drop it here"));
        OneFile.takenFrom(upload, faults, this::bring);
        section.add(upload);
        return section;
    }

    private void bring(byte[] bytes) {
        switch (HomesteadFile.read(bytes)) {
            case Reading.Refused refused ->
                faults.show("The file is not accepted; nothing was changed.", refused.faults());
            case Reading.Accepted accepted -> begin(accepted.homestead());
        }
    }

    private void begin(Homestead homestead) {
        show(changes.add(homestead));
    }

    private void show(Changes.Change change) {
        switch (change) {
            case Changes.Change.Stored stored -> UI.getCurrent().navigate("");
            case Changes.Change.Refused refused ->
                faults.show("The homestead is not accepted; nothing was changed.", refused.faults());
            case Changes.Change.Outdated outdated -> faults.show(outdated.message());
        }
    }
}
