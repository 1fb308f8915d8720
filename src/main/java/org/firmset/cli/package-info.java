/** Commands for the terminal. */
@NullMarked
package org.firmset.cli;

import org.jspecify.annotations.NullMarked;
