package org.firmset.spend.ui;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.homestead.store.Homesteads;
import org.firmset.spend.store.ReceiptBook;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;

/** The demo of a new season without receipts, opened. The same settings everywhere, so that all share one program. */
@SpringBootTest(
        properties =
                "FIRMSET_DB_URL=jdbc:h2:mem:pages;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH")
abstract class SpendPagesWithoutBrowser extends SpringBrowserlessTest {
    static final Homestead DEMO = SeedHomesteads.demo(LocalDate.of(2026, 12, 1));

    @Autowired
    Homesteads homesteads;

    @Autowired
    ReceiptBook book;

    UUID place;

    @BeforeEach
    void openTheDemo() {
        place = opened(DEMO);
    }

    void open(Homestead homestead) {
        place = opened(homestead);
    }

    private UUID opened(Homestead homestead) {
        UUID id = homesteads.add(homestead).id();
        homesteads.open(id);
        return id;
    }

    TextField field(String caption) {
        return find(TextField.class).withCaption(caption).single();
    }

    void press(String text) {
        test(find(Button.class).withText(text).single()).click();
    }

    List<String> items() {
        return find(ListItem.class).all().stream()
                .map(i -> i.getElement().getTextRecursively())
                .toList();
    }

    List<String> paragraphs() {
        return find(Paragraph.class).all().stream().map(Paragraph::getText).toList();
    }
}
