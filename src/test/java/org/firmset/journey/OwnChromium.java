package org.firmset.journey;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The Chromium of this machine, driven without fetching one. */
final class OwnChromium implements AutoCloseable {
    private final Playwright playwright;
    private final Browser browser;

    private OwnChromium(Path program) {
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(program)
                        .setArgs(List.of("--no-sandbox", "--disable-background-networking", "--disable-gpu")));
    }

    static Optional<Path> program() {
        String given = System.getenv("FIRMSET_CHROMIUM");
        return Stream.of(
                        given == null ? "" : given,
                        "/usr/bin/chromium",
                        "/usr/bin/chromium-browser",
                        "/snap/bin/chromium",
                        "/Applications/Chromium.app/Contents/MacOS/Chromium")
                .filter(p -> !p.isEmpty())
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst();
    }

    static OwnChromium start(Path program) {
        return new OwnChromium(program);
    }

    Browser browser() {
        return browser;
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
