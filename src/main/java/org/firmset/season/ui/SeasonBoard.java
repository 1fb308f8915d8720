package org.firmset.season.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.ComponentEvent;
import com.vaadin.flow.component.ComponentEventListener;
import com.vaadin.flow.component.DomEvent;
import com.vaadin.flow.component.EventData;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.shared.Registration;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The drawn season. The drawing itself is done by the browser, in assets/season-board.js. */
@Tag("season-board")
@JsModule("context://assets/season-board.js")
final class SeasonBoard extends Component {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    SeasonBoard(BoardData data) {
        ObjectNode json = MAPPER.valueToTree(data);
        getElement().setPropertyJson("data", json);
    }

    void choose(String stage) {
        getElement().setProperty("chosen", stage);
    }

    Registration addStageChosenListener(ComponentEventListener<StageChosen> listener) {
        return addListener(StageChosen.class, listener);
    }

    Registration addTripChosenListener(ComponentEventListener<TripChosen> listener) {
        return addListener(TripChosen.class, listener);
    }

    /** A person chose a trip. */
    @DomEvent("trip-chosen")
    public static final class TripChosen extends ComponentEvent<SeasonBoard> {
        private static final long serialVersionUID = 1L;

        private final String trip;

        public TripChosen(SeasonBoard source, boolean fromClient, @EventData("event.detail.trip") String trip) {
            super(source, fromClient);
            this.trip = trip;
        }

        String trip() {
            return trip;
        }
    }

    /** A person chose a stage. */
    @DomEvent("stage-chosen")
    public static final class StageChosen extends ComponentEvent<SeasonBoard> {
        private static final long serialVersionUID = 1L;

        private final String stage;

        public StageChosen(SeasonBoard source, boolean fromClient, @EventData("event.detail.stage") String stage) {
            super(source, fromClient);
            this.stage = stage;
        }

        String stage() {
            return stage;
        }
    }
}
