/** The homestead file: one JSON document for the whole place; read all or nothing, written without loss. */
@NullMarked
package org.firmset.homestead.file;

import org.jspecify.annotations.NullMarked;
