/** One component of a record that people write: what it is called, what it takes, how its value is read and shown. */
@NullMarked
package org.firmset.homestead.part;

import org.jspecify.annotations.NullMarked;
