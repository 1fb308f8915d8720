package org.firmset.homestead.ui;

import org.firmset.shell.Destination;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What other rooms may know of these pages: where they are. */
@Configuration(proxyBeanMethods = false)
public class HomesteadPages {
    /** Where a homestead is chosen or begun. */
    public static final String START = "start";

    static final String PLACE = "place";
    private static final String EDIT = "edit";
    private static final String STAGES = "stages";

    @Bean
    Destination placeAndKit() {
        return new Destination(80, "Place and kit", PlaceView.class);
    }

    /** Where one thing of a list is changed: ("stages", "wall-fill"). */
    public static String edit(String part, String item) {
        return EDIT + "/" + part + "/" + item;
    }

    /** The page on which a thing can be seen. */
    static String shownOn(String part, String item) {
        return switch (part) {
            case "stages" -> item.equals(EditView.NEW) ? STAGES : STAGES + "/" + item;
            case "waits", "subprojects" -> STAGES;
            default -> PLACE;
        };
    }

    /** Where a thing is added to a list. */
    public static String add(String part) {
        return edit(part, EditView.NEW);
    }
}
