package org.firmset.season.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.plan.Effort;
import org.firmset.plan.Style;
import org.firmset.season.Reports;
import org.firmset.season.ask.SideBySide;
import org.firmset.season.report.SeasonPlanner;
import org.firmset.season.result.SeasonReport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class MovesDrawingTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

    private SideBySide plans;
    private Element drawing;

    @BeforeAll
    void draw() throws Exception {
        Homestead demo = SeedHomesteads.demo(TODAY);
        SeasonReport report = report(demo);
        plans = SideBySide.of(
                new SideBySide.Named("Now", report), new SideBySide.Named("Sun & <rain>", shifted(report)));
        drawing = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(new MovesDrawing(plans).svg())))
                .getDocumentElement();
    }

    private static SeasonReport report(Homestead homestead) {
        SeasonPlanner.Result result = new SeasonPlanner().plan(homestead, TODAY, Style.SOONEST, new Effort(300, 1));
        return ((SeasonPlanner.Result.Planned) result).season().report();
    }

    /** Every stage some weeks earlier or later, or where it was. */
    private static SeasonReport shifted(SeasonReport r) {
        List<SeasonReport.StagePart> stages = new ArrayList<>();
        for (SeasonReport.StagePart s : r.stages()) {
            int weeks = stages.size() % 6 - 2;
            stages.add(new SeasonReport.StagePart(
                    s.key(),
                    s.name(),
                    s.subproject(),
                    s.state(),
                    s.start().plusWeeks(weeks),
                    s.finish().plusWeeks(weeks),
                    s.labourLeft(),
                    s.whyNotSooner(),
                    s.slackDays(),
                    s.slackTrips(),
                    s.critical()));
        }
        return Reports.withStages(r, stages);
    }

    private static List<Element> elements(Element in, String tag, String look) {
        NodeList all = in.getElementsByTagName(tag);
        List<Element> found = new ArrayList<>();
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            if (look.isEmpty() || element.getAttribute("class").equals(look)) {
                found.add(element);
            }
        }
        return found;
    }

    private static double number(Element rect, String attribute) {
        return Double.parseDouble(rect.getAttribute(attribute));
    }

    @Test
    void each_moved_stage_is_drawn_where_it_was_and_where_it_is_with_the_same_number() {
        assertThat(plans.moved()).hasSizeGreaterThan(5);
        List<String> numbers = new ArrayList<>();
        for (int i = 1; i <= plans.moved().size(); i++) {
            numbers.add(Integer.toString(i));
        }
        for (String look : List.of("fs-was", "fs-is")) {
            assertThat(elements(drawing, "g", look))
                    .extracting(g -> elements(g, "text", "").getFirst().getTextContent())
                    .containsExactlyInAnyOrderElementsOf(numbers);
        }
        assertThat(elements(drawing, "g", "fs-is"))
                .extracting(g -> elements(g, "title", "").getFirst().getTextContent())
                .allSatisfy(title -> assertThat(title).startsWith("Sun & <rain>, "));
    }

    @Test
    void no_box_covers_another_or_lies_outside() {
        double width = number(elements(drawing, "svg", "fs-drawing fs-moves").getFirst(), "width");
        double height = number(elements(drawing, "svg", "fs-drawing fs-moves").getFirst(), "height");
        List<Element> boxes = elements(drawing, "rect", "");
        assertThat(boxes).hasSizeGreaterThan(10);
        for (int i = 0; i < boxes.size(); i++) {
            Element box = boxes.get(i);
            assertThat(number(box, "x")).isGreaterThanOrEqualTo(0);
            assertThat(number(box, "x") + number(box, "width")).isLessThanOrEqualTo(width);
            assertThat(number(box, "y") + number(box, "height")).isLessThanOrEqualTo(height);
            for (Element other : boxes.subList(i + 1, boxes.size())) {
                boolean apart = number(box, "x") + number(box, "width") <= number(other, "x")
                        || number(other, "x") + number(other, "width") <= number(box, "x")
                        || number(box, "y") + number(box, "height") <= number(other, "y")
                        || number(other, "y") + number(other, "height") <= number(box, "y");
                assertThat(apart).as("boxes %d and one after it", i).isTrue();
            }
        }
    }

    @Test
    void a_trip_with_work_for_a_subproject_is_a_tick_on_its_line_in_each_plan() {
        long expected = plans.finishes().stream()
                .filter(f -> plans.moved().stream().anyMatch(m -> m.subproject().equals(f.key())))
                .mapToLong(f -> (long) f.tripsFirst() + f.tripsSecond())
                .sum();
        assertThat(expected).isPositive();
        assertThat(elements(drawing, "path", "fs-tick")).hasSize((int) expected);
    }
}
