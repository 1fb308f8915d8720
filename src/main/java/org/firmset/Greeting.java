package org.firmset;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.web.server.context.WebServerInitializedEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Says where to find the pages once they answer. */
@Component
final class Greeting {
    private static final Logger LOG = LoggerFactory.getLogger(Greeting.class);

    @EventListener
    void started(WebServerInitializedEvent event) {
        LOG.info(
                "Firmset is ready: open http://127.0.0.1:{}/ in a browser. Ctrl+C ends it.",
                event.getWebServer().getPort());
    }
}
