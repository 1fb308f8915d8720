/** The season, the next trip and the stages on screen. */
@NullMarked
package org.firmset.season.ui;

import org.jspecify.annotations.NullMarked;
