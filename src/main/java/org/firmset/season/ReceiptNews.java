package org.firmset.season;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import org.firmset.spend.store.ReceiptBook.ReceiptsChanged;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Service;

/** Tells whoever listens that receipts of a homestead were entered, changed, brought in or removed. Thread-safe. */
@Service
public class ReceiptNews {
    private final Map<UUID, List<Runnable>> listeners = new ConcurrentHashMap<>();

    /** @param listener is told on the thread that made the change, after it was stored */
    public Seasons.Listening listen(UUID homestead, Runnable listener) {
        List<Runnable> all = listeners.computeIfAbsent(homestead, id -> new CopyOnWriteArrayList<>());
        all.add(listener);
        return () -> all.remove(listener);
    }

    @EventListener
    void receiptsChanged(ReceiptsChanged event) {
        listeners.getOrDefault(event.homestead(), List.of()).forEach(Runnable::run);
    }
}
