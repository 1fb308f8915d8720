package org.firmset.spend.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.server.streams.UploadEvent;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.firmset.homestead.ui.FaultList;
import org.firmset.homestead.ui.RefusedFiles;
import org.firmset.spend.ContentHash;
import org.firmset.spend.DocumentCheck;
import org.firmset.spend.DocumentType;
import org.firmset.spend.store.Documents;
import org.firmset.spend.store.KeptDocument;
import org.jspecify.annotations.Nullable;

/** The photos and papers of a receipt: shown, added, taken off. */
final class DocumentFields extends Div {
    static final String MISSING = "The file is missing from the data folder. Hand in the same photo or paper again,"
            + " or bring the folder 'documents' back from a copy.";

    private final Documents documents;
    private final List<KeptDocument> attached;
    private final @Nullable ContentHash named;
    private final UnorderedList list = new UnorderedList();
    private final FaultList faults = new FaultList();

    /** @param named the one the receipt's table names; null when it names none */
    DocumentFields(Documents documents, List<KeptDocument> attached, @Nullable ContentHash named) {
        this.documents = documents;
        this.attached = new ArrayList<>(attached);
        this.named = named;
        addClassName("fs-documents");
        list.addClassName("fs-document-list");
        add(list, upload(), faults);
        showAttached();
        if (named != null && attached.stream().noneMatch(d -> d.hash().equals(named))) {
            add(new Paragraph("The table it came from names a document ("
                    + named.hex().substring(0, 12) + "...) that has not been handed in here."));
        }
    }

    private Upload upload() {
        Upload upload = new Upload();
        upload.setUploadHandler(event -> take(event, upload));
        upload.setAcceptedMimeTypes("image/jpeg", "image/png", "image/webp", "image/heic", "application/pdf");
        upload.setAcceptedFileExtensions(".jpg", ".jpeg", ".png", ".webp", ".heic", ".pdf");
        upload.setMaxFileSize(DocumentCheck.MOST_BYTES);
        upload.setUploadButton(new Button("Add a photo or PDF"));
        upload.setDropLabel(new Span("or drop it here"));
        RefusedFiles.tell(upload, faults);
        return upload;
    }

    /** Runs beside the page: only what came of it is shown there. */
    private void take(UploadEvent event, Upload upload) throws IOException {
        Documents.Taken taken = documents.take(event.getFileName(), event.getInputStream());
        UI ui = event.getUI();
        ui.access(() -> {
            upload.clearFileList();
            show(taken);
        });
    }

    private void show(Documents.Taken taken) {
        faults.clear();
        switch (taken) {
            case Documents.Taken.Refused refused -> faults.show("The file was not taken.", List.of(refused.fault()));
            case Documents.Taken.Stored stored -> {
                attached.removeIf(d -> d.hash().equals(stored.document().hash()));
                attached.add(stored.document());
                showAttached();
            }
        }
    }

    private void showAttached() {
        list.removeAll();
        attached.forEach(d -> list.add(item(d)));
    }

    private ListItem item(KeptDocument document) {
        ListItem item = new ListItem();
        if (documents.file(document).isPresent()) {
            Anchor link = new Anchor(SpendPages.document(document.hash()), document.name());
            link.setTarget("_blank");
            if (document.type() != DocumentType.PDF && document.type() != DocumentType.HEIC) {
                Image image = new Image(SpendPages.document(document.hash()), "");
                image.addClassName("fs-thumbnail");
                item.add(image);
            }
            item.add(link, new Span(Math.max(1, document.bytes() >> 10) + " KiB"));
        } else {
            Span missing = new Span(MISSING);
            missing.addClassName("fs-warning");
            item.add(new Span(document.name()), missing);
        }
        Button off = new Button("Remove", e -> {
            attached.remove(document);
            showAttached();
        });
        off.setAriaLabel("Take off " + document.name());
        off.addThemeVariants(ButtonVariant.TERTIARY, ButtonVariant.SMALL);
        item.add(off);
        return item;
    }

    List<KeptDocument> attached() {
        return List.copyOf(attached);
    }

    /** What the receipt names: what its table named, else the first that is attached. */
    @Nullable
    ContentHash named(List<KeptDocument> before) {
        boolean takenOff = before.stream().anyMatch(d -> d.hash().equals(named))
                && attached.stream().noneMatch(d -> d.hash().equals(named));
        if (named != null && !takenOff) {
            return named;
        }
        return attached.isEmpty() ? null : attached.getFirst().hash();
    }
}
