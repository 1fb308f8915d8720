package org.firmset.shell;

import com.vaadin.flow.component.Component;

/** Something that stands under the navigation of every page. Rooms offer theirs as beans. */
@FunctionalInterface
public interface FrameNote {
    Component make();
}
