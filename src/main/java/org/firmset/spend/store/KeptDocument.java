package org.firmset.spend.store;

import org.firmset.spend.ContentHash;
import org.firmset.spend.DocumentType;

/**
 * A photo or paper of a receipt.
 *
 * @param name as the file was called when it was handed in; for people only
 * @param bytes its size
 */
public record KeptDocument(ContentHash hash, DocumentType type, String name, long bytes) {}
