package org.firmset.season.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.component.textfield.TextFieldTester;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import org.firmset.homestead.store.Homesteads;
import org.firmset.season.SeasonState;
import org.firmset.season.Seasons;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;

/** Pages without a browser, and the demo on them. The same settings everywhere, so that all share one program. */
@SpringBootTest(
        properties = {
            "FIRMSET_DB_URL=jdbc:h2:mem:demo-pages;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH",
            // what the pages say does not hang on how long is looked
            "firmset.planner.plans=800",
            "firmset.planner.proof=1"
        })
abstract class DemoPages extends SpringBrowserlessTest {
    @Autowired
    Homesteads homesteads;

    @Autowired
    Seasons seasons;

    String title() {
        return find(H1.class).single().getText();
    }

    List<String> items() {
        return find(ListItem.class).all().stream()
                .map(li -> li.getElement().getTextRecursively())
                .toList();
    }

    UUID openTheDemoAndEndTheLook() {
        navigate("start", Div.class);
        test(find(Button.class).withText("Open the demo").single()).click();
        UUID opened = homesteads.opened().orElseThrow();
        until(() -> seasons.state(opened) instanceof SeasonState.Planned);
        until(() -> {
            seasons.endLook(opened);
            return !seasons.state(opened).isLooking();
        });
        return opened;
    }

    /** What comes from the background is shown when the page is looked at again. */
    void until(BooleanSupplier there) {
        Instant last = Instant.now().plusSeconds(60);
        while (!there.getAsBoolean()) {
            assertThat(Instant.now()).isBefore(last);
            LockSupport.parkNanos(20_000_000);
            runPendingSignalsTasks();
        }
    }

    List<String> paragraphs() {
        return find(Paragraph.class).all().stream().map(Paragraph::getText).toList();
    }

    TextFieldTester<TextField, String> field(String label) {
        return test(find(TextField.class).withCaption(label).single());
    }
}
