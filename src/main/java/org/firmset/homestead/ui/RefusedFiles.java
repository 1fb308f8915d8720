package org.firmset.homestead.ui;

import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.component.upload.UploadI18N;

/** Says in the page's own words why a browser does not even send a file. */
public final class RefusedFiles {
    private RefusedFiles() {}

    /** @param upload with the endings and the size it accepts already set */
    public static void tell(Upload upload, FaultList faults) {
        UploadI18N words = new UploadI18N();
        words.setError(new UploadI18N.Error()
                .setIncorrectFileType("it is none of "
                        + String.join(", ", upload.getAcceptedFileExtensions()).replace(".", ""))
                .setFileIsTooBig(tooLarge(upload))
                .setTooManyFiles("one at a time"));
        upload.setI18n(words);
        upload.addFileRejectedListener(e -> faults.show("The file was not taken: " + e.getErrorMessage() + "."));
    }

    static String tooLarge(Upload upload) {
        return "it is larger than " + (upload.getMaxFileSize() >> 20) + " MiB";
    }
}
