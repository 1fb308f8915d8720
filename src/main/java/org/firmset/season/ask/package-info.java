/** What owners ask of a plan: why not sooner, which change moved what, another style, two plans side by side, more power. */
@NullMarked
package org.firmset.season.ask;

import org.jspecify.annotations.NullMarked;
