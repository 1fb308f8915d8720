package org.firmset.spend.ui;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.firmset.spend.ContentHash;
import org.firmset.spend.DocumentType;
import org.firmset.spend.store.Documents;
import org.firmset.spend.store.KeptDocument;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.core.io.FileSystemResource;
import org.springframework.core.io.Resource;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/**
 * Hands out photos and papers as what they were found to be and never as a page: a browser shows the pictures it knows
 * and saves the rest.
 */
@RestController
final class DocumentFiles {
    private static final Set<DocumentType> SHOWN = Set.of(DocumentType.JPEG, DocumentType.PNG, DocumentType.WEBP);

    private final Documents documents;

    DocumentFiles(Documents documents) {
        this.documents = documents;
    }

    @GetMapping("/" + SpendPages.DOCUMENTS + "/{hash}")
    ResponseEntity<Resource> document(@PathVariable("hash") String hash) {
        Optional<KeptDocument> document = Optional.of(hash)
                .filter(h -> h.matches("[0-9a-f]{64}"))
                .map(ContentHash::new)
                .flatMap(documents::find);
        if (document.isEmpty()) {
            return missing("No such document was ever handed in.");
        }
        return documents
                .file(document.get())
                .map(file -> found(document.get(), file))
                .orElseGet(() -> missing(DocumentFields.MISSING));
    }

    private static ResponseEntity<Resource> found(KeptDocument document, Path file) {
        String name = "receipt-" + document.hash().hex().substring(0, 12) + "."
                + document.type().name().toLowerCase(Locale.ROOT);
        ContentDisposition.Builder place =
                SHOWN.contains(document.type()) ? ContentDisposition.inline() : ContentDisposition.attachment();
        return guarded(HttpStatus.OK)
                .header("Content-Disposition", place.filename(name).build().toString())
                .contentType(MediaType.parseMediaType(document.type().mediaType()))
                .contentLength(document.bytes())
                .body(new FileSystemResource(file));
    }

    private static ResponseEntity<Resource> missing(String why) {
        return guarded(HttpStatus.NOT_FOUND)
                .contentType(MediaType.TEXT_PLAIN)
                .body(new ByteArrayResource(why.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
    }

    private static ResponseEntity.BodyBuilder guarded(HttpStatus status) {
        return ResponseEntity.status(status)
                .header("X-Content-Type-Options", "nosniff")
                .header("Content-Security-Policy", "sandbox; default-src 'none'")
                .header("Cross-Origin-Resource-Policy", "same-origin")
                .header("Cache-Control", "private, no-cache");
    }
}
