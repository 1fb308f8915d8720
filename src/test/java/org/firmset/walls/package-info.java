/** Tests of the walls between the rooms. */
@NullMarked
package org.firmset.walls;

import org.jspecify.annotations.NullMarked;
