/** Pages to describe the homestead on. */
@NullMarked
package org.firmset.homestead.ui;

import org.jspecify.annotations.NullMarked;
