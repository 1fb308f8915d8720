package org.firmset.spend.store;

import java.io.IOException;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.scheduling.annotation.EnableScheduling;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;

/**
 * Removes photos and papers that were handed in on a form which was then left, and halves of them that a power cut left,
 * soon after the start and once a day.
 */
@Component
@EnableScheduling
class DocumentSweep {
    /** A form may stay open over night. */
    private static final Duration AGE = Duration.ofDays(1);

    private static final Logger LOG = LoggerFactory.getLogger(DocumentSweep.class);

    private final Documents documents;

    DocumentSweep(Documents documents) {
        this.documents = documents;
    }

    @Scheduled(initialDelay = 1, fixedDelay = 24 * 60, timeUnit = TimeUnit.MINUTES)
    void sweep() throws IOException {
        int removed = documents.removeUnused(AGE);
        if (removed > 0) {
            LOG.info("Removed {} of the photos and papers: no receipt refers to them, and none did for a day", removed);
        }
        int halfWritten = documents.removeHalfWritten(AGE);
        if (halfWritten > 0) {
            LOG.info("Removed {} photos or papers that were half written when the program ended", halfWritten);
        }
    }
}
