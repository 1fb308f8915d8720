package org.firmset.homestead.ui;

import org.firmset.homestead.Takeoff;
import org.firmset.shell.Destination;
import org.firmset.trade.trace.Kind;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What other rooms may know of these pages: where they are. */
@Configuration(proxyBeanMethods = false)
public class HomesteadPages {
    /** Where a homestead is chosen or begun. */
    public static final String START = "start";

    static final String TAKEOFFS = "takeoffs";
    static final String PLACE = "place";
    private static final String EDIT = "edit";
    private static final String STAGES = "stages";

    @Bean
    Destination placeAndKit() {
        return new Destination(80, "Place and kit", PlaceView.class);
    }

    @Bean
    Destination takeoffs() {
        return new Destination(60, "Takeoffs", TakeoffsView.class);
    }

    /** Where a takeoff that is kept is shown and changed. */
    public static String takeoff(Takeoff takeoff) {
        return TAKEOFFS + "/" + takeoff.kind() + "/" + takeoff.key();
    }

    /** Where something is worked out anew. */
    static String takeoff(Kind<?> kind) {
        return TAKEOFFS + "/" + kind.key();
    }

    /** Where a stage is shown. */
    static String stage(String key) {
        return STAGES + "/" + key;
    }

    /** Where one thing of a list is changed: ("stages", "wall-fill"). */
    public static String edit(String part, String item) {
        return EDIT + "/" + part + "/" + item;
    }

    /** The page on which a thing can be seen. */
    static String shownOn(String part, String item) {
        return switch (part) {
            case "stages" -> item.equals(EditView.NEW) ? STAGES : stage(item);
            case "waits", "subprojects" -> STAGES;
            default -> PLACE;
        };
    }

    /** Where a thing is added to a list. */
    public static String add(String part) {
        return edit(part, EditView.NEW);
    }
}
