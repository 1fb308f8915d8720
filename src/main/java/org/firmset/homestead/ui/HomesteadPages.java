package org.firmset.homestead.ui;

import org.firmset.shell.Destination;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What other rooms may know of these pages: where they are. */
@Configuration(proxyBeanMethods = false)
public class HomesteadPages {
    /** Where a homestead is chosen or begun. */
    public static final String START = "start";

    private static final String EDIT = "edit";

    @Bean
    Destination placeAndKit() {
        return new Destination(80, "Place and kit", PlaceView.class);
    }

    /** Where one thing of a list is changed: ("stages", "wall-fill"). */
    public static String edit(String part, String item) {
        return EDIT + "/" + part + "/" + item;
    }

    /** Where a thing is added to a list. */
    public static String add(String part) {
        return edit(part, EditView.NEW);
    }
}
