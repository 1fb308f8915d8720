package org.firmset.shell;

import com.vaadin.flow.component.Component;

/**
 * A page that the navigation leads to. Rooms offer theirs as beans.
 *
 * @param order from left to right
 */
public record Destination(int order, String name, Class<? extends Component> view) {}
