package org.firmset.journey;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.firmset.Firmset;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

/** The program with a data folder of its own, and a browser that looks at it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class Journey {
    private static final Path SHOTS = Path.of("target/screenshots");

    @TempDir
    private static Path data;

    private OwnChromium chromium;
    private ConfigurableApplicationContext application;
    private String address = "";
    private final List<String> troubles = new ArrayList<>();

    @BeforeAll
    void start() {
        Optional<Path> program = OwnChromium.program();
        assumeTrue(program.isPresent(), "Chromium is not installed, so browser tests are skipped");
        chromium = OwnChromium.start(program.get());
        // a machine with more to do is slow, not wrong
        PlaywrightAssertions.setDefaultAssertionTimeout(20_000);
        open();
    }

    private void open() {
        // what the pages say does not hang on how long is looked
        application = new SpringApplicationBuilder(Firmset.class)
                .run(
                        "--server.port=0",
                        "--firmset.planner.plans=800",
                        "--firmset.planner.proof=1",
                        "--FIRMSET_HOME=" + data);
        address = "http://127.0.0.1:" + application.getEnvironment().getProperty("local.server.port") + "/";
    }

    /** The program again, with the same data. */
    void restart() {
        application.close();
        open();
    }

    @AfterAll
    void stop() {
        if (chromium != null) {
            chromium.close();
        }
        if (application != null) {
            application.close();
        }
    }

    Path data() {
        return data;
    }

    String address(String path) {
        return address + path;
    }

    /** What browsers complained of is a fault of the journey that was under way. */
    @AfterEach
    void nothingWentWrongInTheBrowser() {
        List<String> found = List.copyOf(troubles);
        troubles.clear();
        assertThat(found).isEmpty();
    }

    Page page(int width, ColorScheme colours) {
        return page(width, 880, colours);
    }

    Page page(int width, int height, ColorScheme colours) {
        Page page = chromium.browser()
                .newContext(new Browser.NewContextOptions()
                        .setViewportSize(width, height)
                        .setColorScheme(colours))
                .newPage();
        page.setDefaultTimeout(20_000);
        page.onPageError(troubles::add);
        page.onConsoleMessage(m -> {
            if (m.type().equals("error")) {
                troubles.add(m.text() + " " + m.location());
            }
        });
        return page;
    }

    void openDemo() {
        Page page = page(1440, ColorScheme.LIGHT);
        page.navigate(address);
        page.getByText("Open the demo").click();
        // the first plan is made meanwhile, which takes a while on a busy machine
        assertThat(heading(page, "^Trip 1, ")).isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(60_000));
        page.context().close();
    }

    static Locator heading(Page page, String name) {
        return page.getByRole(
                AriaRole.HEADING,
                new Page.GetByRoleOptions().setName(Pattern.compile(name)).setLevel(1));
    }

    static void shoot(Page page, String name) {
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(SHOTS.resolve(name + ".png"))
                .setFullPage(true));
    }

    /** The page as it stands, on a desktop and a phone, light and dark; wide and light again afterwards. */
    static void fitsEverywhere(Page page, String shot) {
        for (ColorScheme colours : List.of(ColorScheme.DARK, ColorScheme.LIGHT)) {
            page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(colours));
            for (int width : List.of(390, 1440)) {
                page.setViewportSize(width, 880);
                fits(page, width + "-" + colours + "-" + shot);
            }
        }
    }

    static void fits(Page page, String shot) {
        shoot(page, shot);
        Object sideways = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        Object wide = page.evaluate("[...document.querySelectorAll('.fs-page *')].filter(e =>"
                + " e.getBoundingClientRect().right > document.documentElement.clientWidth + 1"
                + " && !e.closest('.fs-table, .fs-drawing-frame')).map(e => e.tagName + '.' + e.className).join(' ')");
        assertThat(sideways).as("sideways scroll in " + shot + ", by " + wide).isEqualTo(0);
    }
}
