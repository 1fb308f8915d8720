package org.firmset.homestead.ui;

import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.server.streams.UploadEvent;
import com.vaadin.flow.server.streams.UploadHandler;
import com.vaadin.flow.server.streams.UploadResult;
import java.io.IOException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

/**
 * Takes one file at a time, whole, and hands it to the page only when the next one may come.
 *
 * <p>A page that says at once what is wrong with a file invites the mended one; were it told while the first still
 * counts as on its way, the field would refuse the second.
 */
final class OneFile implements UploadHandler {
    private static final Runnable NOTHING = () -> {};

    private final Upload upload;
    private final FaultList faults;
    private final Consumer<byte[]> taking;
    private final AtomicReference<Runnable> handingOver = new AtomicReference<>(NOTHING);

    private OneFile(Upload upload, FaultList faults, Consumer<byte[]> taking) {
        this.upload = upload;
        this.faults = faults;
        this.taking = taking;
    }

    /**
     * @param upload with the endings and the size it accepts already set
     * @param taking is given the bytes in the page's turn
     */
    static void takenFrom(Upload upload, FaultList faults, Consumer<byte[]> taking) {
        upload.setMaxFiles(1);
        upload.setUploadHandler(new OneFile(upload, faults, taking));
        RefusedFiles.tell(upload, faults);
    }

    @Override
    public void handleUploadRequest(UploadEvent event) throws IOException {
        int most = upload.getMaxFileSize();
        // the browser may have been told another limit than the one kept here
        byte[] bytes = event.getInputStream().readNBytes(most + 1);
        handingOver.set(() -> event.getUI().access(() -> {
            upload.clearFileList();
            if (bytes.length > most) {
                faults.show("The file was not taken: " + RefusedFiles.tooLarge(upload) + ".");
            } else {
                taking.accept(bytes);
            }
        }));
    }

    /** By now the field counts the file as arrived. */
    @Override
    public void responseHandled(UploadResult result) {
        UploadHandler.super.responseHandled(result);
        handingOver.getAndSet(NOTHING).run();
    }
}
