/** The frame around all pages: navigation, look and start-up of the web pages. */
@NullMarked
package org.firmset.shell;

import org.jspecify.annotations.NullMarked;
