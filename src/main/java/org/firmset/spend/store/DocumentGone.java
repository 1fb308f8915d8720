package org.firmset.spend.store;

/** A document that was to be attached is known no more: no receipt kept it for longer than a day. */
class DocumentGone extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String name;

    DocumentGone(KeptDocument document) {
        super("document [" + document.name() + "] with hash [" + document.hash().hex()
                + "] is not stored.\nMaybe hand it to Documents first.");
        name = document.name();
    }

    String name() {
        return name;
    }
}
