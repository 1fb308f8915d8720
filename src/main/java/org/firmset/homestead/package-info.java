/**
 * The place as its owners describe it: records that are valid by themselves, the homestead file that carries them, and
 * the store that keeps them.
 */
@NullMarked
package org.firmset.homestead;

import org.jspecify.annotations.NullMarked;
