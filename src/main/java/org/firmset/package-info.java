/** The way in. Every room of the house is a package below this one. */
@NullMarked
package org.firmset;

import org.jspecify.annotations.NullMarked;
