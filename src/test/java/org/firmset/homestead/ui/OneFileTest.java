package org.firmset.homestead.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.server.StreamResourceRegistry.ElementStreamResource;
import com.vaadin.flow.server.VaadinServletRequest;
import com.vaadin.flow.server.VaadinServletResponse;
import com.vaadin.flow.server.VaadinServletService;
import com.vaadin.flow.server.VaadinSession;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;

@SpringBootTest(
        properties =
                "FIRMSET_DB_URL=jdbc:h2:mem:imports;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH")
class OneFileTest extends SpringBrowserlessTest {
    private final Upload upload = new Upload();
    private final FaultList faults = new FaultList();
    private final List<String> taken = new ArrayList<>();

    private int send(String text) throws IOException {
        VaadinSession session = VaadinSession.getCurrent();
        VaadinServletService service = (VaadinServletService) session.getService();
        MockHttpServletRequest request = new MockHttpServletRequest("POST", "/");
        request.addHeader("X-Filename", "days.csv");
        request.setContent(text.getBytes(StandardCharsets.UTF_8));
        roundTrip();
        MockHttpServletResponse response = new MockHttpServletResponse();
        ElementStreamResource way = (ElementStreamResource) session.getResourceRegistry()
                .getResource(URI.create(upload.getElement().getAttribute("target")))
                .orElseThrow();
        // files arrive beside the page, not in its turn
        session.unlock();
        try {
            way.getElementRequestHandler()
                    .handleRequest(
                            new VaadinServletRequest(request, service),
                            new VaadinServletResponse(response, service),
                            session,
                            upload.getElement());
        } finally {
            session.lock();
        }
        return response.getStatus();
    }

    @BeforeEach
    void show() {
        upload.setAcceptedFileExtensions(".csv");
        upload.setMaxFileSize(2 << 20);
        UI.getCurrent().add(upload, faults);
    }

    @Test
    void a_file_is_read_when_the_next_may_come() throws IOException {
        List<Boolean> busy = new ArrayList<>();
        OneFile.takenFrom(upload, faults, bytes -> {
            busy.add(upload.isUploading());
            taken.add(new String(bytes, StandardCharsets.UTF_8));
        });
        assertThat(send("9 mph")).isEqualTo(200);
        assertThat(send("4")).isEqualTo(200);
        assertThat(taken).containsExactly("9 mph", "4");
        assertThat(busy).containsExactly(false, false);
    }

    @Test
    void a_file_larger_than_the_field_takes_is_not_read_even_when_the_browser_sends_it() throws IOException {
        OneFile.takenFrom(upload, faults, bytes -> taken.add("read"));
        send("x".repeat((2 << 20) + 1));
        assertThat(taken).isEmpty();
        assertThat(faults.getElement().getTextRecursively())
                .contains("The file was not taken: it is larger than 2 MiB.");
        send("x".repeat(2 << 20));
        assertThat(taken).containsExactly("read");
    }
}
