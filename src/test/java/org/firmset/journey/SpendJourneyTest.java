package org.firmset.journey;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import org.firmset.spend.ContentHash;
import org.firmset.spend.table.TableReader;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;

/** Receipts in the browser a person would use: entered by keyboard, with a photo, looked up, brought in, taken out. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class SpendJourneyTest extends Journey {

    @BeforeAll
    void begin() {
        openDemo();
    }

    @Test
    @Order(1)
    void a_receipt_is_entered_with_eight_keys_and_its_words() {
        Page page = page(1440, ColorScheme.LIGHT);
        page.navigate(address("spend/receipts/new"));
        Locator what = page.getByLabel("What", exactly());
        assertThat(what).isFocused();
        page.keyboard().type("Screws, box");
        page.keyboard().press("Tab");
        page.keyboard().type("12.40");
        assertThat(page.getByText("Comes to $12.40.")).isVisible();
        page.keyboard().press("Control+Enter");
        assertThat(heading(page, "^Receipts$")).isVisible();
        assertThat(page.locator(".fs-ledger li").first()).containsText("Screws, box");
        page.context().close();
    }

    private static Page.GetByLabelOptions exactly() {
        return new Page.GetByLabelOptions().setExact(true);
    }

    @Test
    @Order(2)
    void pages_fit_desktop_and_phone_in_light_and_dark() {
        Page page = page(1440, ColorScheme.LIGHT);
        page.navigate(address("spend/receipts"));
        assertThat(heading(page, "^Receipts$")).isVisible();
        fitsEverywhere(page, "receipts");
        page.locator(".fs-ledger li")
                .filter(new Locator.FilterOptions().setHasText("Water tank"))
                .getByRole(AriaRole.LINK)
                .click();
        assertThat(heading(page, "^Tank, pipe and water supplier, ")).isVisible();
        page.getByText("Quantity, price, kind").first().click();
        assertThat(page.getByLabel("Paid down so far")).hasValue("400.00");
        fitsEverywhere(page, "receipt");
        assertThat(page.getByLabel("Rest due on")).hasValue(Pattern.compile("\\d{4}-07-\\d\\d"));
        page.getByText("paid", new Page.GetByTextOptions().setExact(true))
                .first()
                .click();
        assertThat(page.getByLabel("Rest paid on")).isVisible();
        fits(page, "1440-receipt-paid-later");
        page.navigate(address("spend/receipts/new"));
        assertThat(page.getByLabel("What", exactly())).isFocused();
        fitsEverywhere(page, "receipt-new");
        page.navigate(address("spend/import"));
        assertThat(heading(page, "^Bring a table$")).isVisible();
        fitsEverywhere(page, "import");
        page.context().close();
    }

    @Test
    @Order(3)
    void a_large_photo_is_kept_as_a_file_and_handed_out_as_a_picture_only() throws IOException {
        byte[] bytes = new byte[3 << 20];
        new SplittableRandom(1).nextBytes(bytes);
        System.arraycopy(new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF}, 0, bytes, 0, 3);
        Path photo = Files.write(data().resolve("till.jpg"), bytes);
        Path script = Files.writeString(data().resolve("page.jpg"), "<html><script>alert(1)</script>");
        String hex = ContentHash.of(bytes).hex();

        Page page = page(390, ColorScheme.LIGHT);
        page.navigate(address("spend/receipts/new"));
        page.locator("vaadin-upload input[type=file]").setInputFiles(script);
        assertThat(page.locator(".fs-faults")).containsText("is no JPEG, PNG, WebP or HEIC picture and no PDF");
        page.locator("vaadin-upload input[type=file]").setInputFiles(photo);
        assertThat(page.locator(".fs-document-list")).containsText("till.jpg");
        page.getByLabel("What", exactly()).fill("Rope");
        page.getByLabel("Amount", exactly()).fill("9");
        page.getByText("Save", new Page.GetByTextOptions().setExact(true)).click();
        assertThat(heading(page, "^Receipts$")).isVisible();
        Locator row = page.locator(".fs-ledger li").filter(new Locator.FilterOptions().setHasText("Rope"));
        assertThat(row).containsText("1 photo or paper");

        assertThat(data().resolve("documents").resolve(hex.substring(0, 2)).resolve(hex))
                .hasBinaryContent(bytes);
        APIResponse answer = page.request().get(address("documents/" + hex));
        assertThat(answer.body()).isEqualTo(bytes);
        assertThat(answer.headers())
                .containsEntry("content-type", "image/jpeg")
                .containsEntry("x-content-type-options", "nosniff")
                .containsEntry("content-security-policy", "sandbox; default-src 'none'");
        assertThat(answer.headers().get("content-disposition")).startsWith("inline");
        assertThat(page.request().get(address("documents/" + "0".repeat(64))).status())
                .isEqualTo(404);
        assertThat(page.request()
                        .get(address("documents/..%2F..%2Ffirmset.mv.db"))
                        .status())
                .isGreaterThanOrEqualTo(400);

        Files.delete(data().resolve("documents").resolve(hex.substring(0, 2)).resolve(hex));
        row.getByRole(AriaRole.LINK).click();
        assertThat(page.locator(".fs-document-list")).containsText("The file is missing from the data folder");
        fits(page, "390-receipt-missing");
        page.locator("vaadin-upload input[type=file]").setInputFiles(photo);
        assertThat(page.locator(".fs-document-list img")).hasCount(1);
        assertThat(page.locator(".fs-document-list li")).hasCount(1);
        page.context().close();
    }

    @Test
    @Order(0)
    void every_figure_is_opened_down_to_its_receipts() {
        Page page = page(1440, ColorScheme.LIGHT);
        page.navigate(address("spend/receipts?subproject=water&stage=water-tank-set"));
        assertThat(page.locator(".fs-ledger li")).hasCount(1);
        assertThat(page.locator(".fs-figures")).containsText("$400.00");
        assertThat(page.locator(".fs-figures")).containsText("$1,830.00");
        page.getByText("Show all again").click();
        assertThat(page.locator(".fs-ledger li").nth(20)).isVisible();
        page.getByLabel("Paid for", exactly()).click();
        page.getByText("fuel", new Page.GetByTextOptions().setExact(true)).click();
        page.waitForURL(Pattern.compile("kind=fuel"));
        assertThat(page.locator(".fs-ledger li")).hasCount(5);
        page.navigate(address("spend/receipts?month=never&kind=moon&stage=gone"));
        assertThat(page.getByText("No receipt is like that.")).isVisible();
        page.context().close();
    }

    @Test
    @Order(5)
    void a_table_is_matched_put_right_and_brought_in_and_known_again() throws IOException {
        String head = "Tag,Laden,Was es war,Summe EUR\n";
        Path wrong = Files.writeString(data().resolve("wrong.csv"), head + "03/04/2026,Mill,Boards,10.00\n");
        Path right = Files.writeString(
                data().resolve("right.csv"), head + "03/04/2026,Mill,Boards,10.00\n13/04/2026,Mill,Posts,22.50\n");
        Page page = page(390, ColorScheme.DARK);
        page.navigate(address("spend/import"));
        page.locator("vaadin-upload input[type=file]").setInputFiles(wrong);
        assertThat(page.locator(".fs-faults").last())
                .containsText("Say which it is: year-first, month-first or day-first");
        fits(page, "390-import-faults");
        page.locator("vaadin-upload input[type=file]").setInputFiles(right);
        page.getByText("Take in 2 receipts, $32.50").click();
        assertThat(page.getByText("2 receipts taken in.")).isVisible();
        Path copy = Files.copy(right, data().resolve("copy.csv"));
        page.locator("vaadin-upload input[type=file]").setInputFiles(copy);
        assertThat(page.getByText("This very file was taken in before.")).isVisible();
        assertThat(page.getByText("Take in 0 receipts, $0.00")).isDisabled();
        page.getByText(Pattern.compile("^Take as well: 2026-04-13, Mill, Posts"))
                .click();
        assertThat(page.getByText("Take in 1 receipt, $22.50")).isEnabled();
        fits(page, "390-import-again");
        page.context().close();
    }

    @Test
    @Order(6)
    void everything_is_exported_as_a_table() throws IOException {
        Page page = page(1440, ColorScheme.LIGHT);
        page.navigate(address("spend/receipts"));
        Download download = page.waitForDownload(
                () -> page.getByText("Export all as a table").click());
        Path file = data().resolve("all.csv");
        download.saveAs(file);
        assertThat(TableReader.read(file).table().orElseThrow().rows()).hasSizeGreaterThan(46);
        page.context().close();
    }

    @Test
    @Order(8)
    void an_order_is_found_by_its_state_and_marked_as_paid_with_one_press() {
        Page page = page(390, ColorScheme.LIGHT);
        page.navigate(address("spend"));
        page.locator("a[href='spend/receipts?subproject=water&state=ordered']")
                .first()
                .click();
        assertThat(page.locator(".fs-ledger li")).hasCount(1);
        fits(page, "390-receipts-ordered");
        page.locator(".fs-ledger li").getByRole(AriaRole.LINK).click();
        page.getByText("Paid, and it is here", new Page.GetByTextOptions().setExact(true))
                .click();
        assertThat(heading(page, "^Receipts$")).isVisible();
        Locator rows = page.locator(".fs-ledger li").filter(new Locator.FilterOptions().setHasText("Water tank"));
        assertThat(rows).hasCount(2);
        assertThat(rows.first()).containsText("the rest paid");
        assertThat(rows.last()).containsText("paid down, the rest on");
        fits(page, "390-receipts-rest");
        page.context().close();
    }

    @Test
    @Order(7)
    void a_receipt_that_looks_like_another_asks_first_on_desktop_and_phone() {
        Page page = page(1440, ColorScheme.LIGHT);
        page.navigate(address("spend/receipts/new"));
        Locator supplier = page.getByLabel("Supplier", exactly());
        supplier.fill("Grocery in town");
        supplier.press("Enter");
        Locator date = page.getByLabel("Date", exactly());
        date.fill("2026-09-26");
        date.press("Enter");
        page.getByLabel("What", exactly()).fill("Food");
        page.getByLabel("Amount", exactly()).fill("36.42");
        Locator note = page.locator("p.fs-warning")
                .filter(new Locator.FilterOptions().setHasText("is there already: Grocery in town"));
        assertThat(note).isVisible();
        page.getByText("Save", new Page.GetByTextOptions().setExact(true)).click();
        assertThat(page.getByText("Save as well", new Page.GetByTextOptions().setExact(true)))
                .isVisible();
        fitsEverywhere(page, "receipt-alike");
        page.context().close();
    }

    @Test
    @Order(8)
    void a_trip_is_written_down_with_its_rate_and_hours_and_asked_about_when_written_again() {
        Page page = page(1440, ColorScheme.LIGHT);
        page.navigate(address("spend/receipts"));
        page.getByText("Write down a trip").click();
        assertThat(heading(page, "^Write down a trip$")).isVisible();
        page.getByText("by a rate for the distance").click();
        page.getByLabel("Rate for a mile, USD", exactly()).fill("0.70");
        page.getByLabel("Tolls", exactly()).fill("6");
        page.getByText("It served another, too").click();
        serves(page, 0, "Dig the base and footing trench", "6.5");
        serves(page, 1, "Take off the topsoil for the shop", "3.5");
        assertThat(page.locator(".fs-trip-outcome")).containsText("Shared by the hours worked on each.");
        assertThat(page.locator(".fs-trip-outcome")).containsText("186 mi at 0.7 USD a mi");
        fitsEverywhere(page, "trip");
        page.keyboard().press("Control+Enter");
        assertThat(heading(page, "^Receipts$")).isVisible();
        assertThat(page.locator(".fs-ledger li").filter(new Locator.FilterOptions().setHasText("Own trip")))
                .containsText("Drive, ");
        page.navigate(address("spend/trip"));
        assertThat(page.locator(".fs-warning li").first())
                .containsText("is a trip of these days that was written down before");
        page.getByLabel("Rate for a mile, USD", exactly()).fill("dear");
        page.getByText("Save", new Page.GetByTextOptions().setExact(true)).click();
        assertThat(page.getByText("Some fields are not right yet")).isVisible();
        fitsEverywhere(page, "trip-again");
        page.context().close();
    }

    private static void serves(Page page, int row, String stage, String hours) {
        Locator bearer = page.locator(".fs-served .fs-share")
                .nth(row)
                .getByLabel("For", new Locator.GetByLabelOptions().setExact(true));
        bearer.fill(stage);
        bearer.press("Enter");
        page.getByLabel("Worked, h", exactly()).nth(row).fill(hours);
    }
}
