package org.firmset.trade.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.firmset.trade.trace.Term.term;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SheetTest {
    private static final Line STEP = Line.step("courses", "Courses", Amount.count(3, "courses"));

    @Test
    void gathers_everything_in_order() {
        Finding note = Finding.note("Mind the wind.");
        Table table = new Table("Ages", List.of("Day"), List.of(List.of(Amount.days(1))));
        Curve curve = new Curve("Strength", "days", "%", List.of(new Curve.Point(0, 0)), List.of());
        CutBar cut = new CutBar(2, 6, List.of(2.5, 2.5), 1);
        Line material = Line.material("bags", "Bags", Amount.packs(1.5, "bags"));
        Worksheet sheet = new Sheet()
                .add(STEP)
                .add(material)
                .add(note)
                .add(table)
                .add(curve)
                .add(cut)
                .done();
        assertThat(sheet)
                .isEqualTo(new Worksheet(
                        List.of(STEP, material), List.of(note), List.of(table), List.of(curve), List.of(cut)));
    }

    @Test
    void lines_are_found_by_key_and_by_role() {
        Line labour = Line.labour(2.5);
        Worksheet sheet = new Sheet().add(STEP).add(labour).done();
        assertThat(sheet.line("labour")).contains(labour);
        assertThat(sheet.line("bags")).isEmpty();
        assertThat(sheet.lines(Line.Role.STEP)).containsExactly(STEP);
        assertThat(sheet.lines(Line.Role.LABOUR)).containsExactly(labour);
        assertThat(sheet.lines(Line.Role.MATERIAL)).isEmpty();
    }

    @Test
    void a_key_twice_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Sheet().add(STEP).add(STEP))
                .withMessage("line key [courses] must be unique in its worksheet");
    }

    @Test
    void lines_are_of_four_roles() {
        assertThat(STEP.role()).isEqualTo(Line.Role.STEP);
        assertThat(Line.answer("k", "n", Amount.ratio(1)).role()).isEqualTo(Line.Role.ANSWER);
        assertThat(Line.material("k", "n", Amount.ratio(1)).role()).isEqualTo(Line.Role.MATERIAL);
        assertThat(Line.labour(1.5))
                .isEqualTo(new Line(
                        "labour",
                        "Labour of all people together",
                        Line.Role.LABOUR,
                        new Amount.Number(1.5, 2, "h"),
                        "",
                        List.of(),
                        Source.ARITHMETIC,
                        null));
    }

    @Test
    void a_line_says_formula_source_and_caution() {
        Term height = term("H", "height", Amount.length(2));
        Line line = Line.answer("courses", "Courses", Amount.count(3, ""))
                .by("n = H / h", height)
                .from(Source.seen("the manual"))
                .heed("Brace it.");
        assertThat(line)
                .isEqualTo(new Line(
                        "courses",
                        "Courses",
                        Line.Role.ANSWER,
                        Amount.count(3, ""),
                        "n = H / h",
                        List.of(height),
                        Source.seen("the manual"),
                        "Brace it."));
    }

    @Test
    void sources_say_how_they_are_known() {
        assertThat(Source.seen("EN 1992-1-1 Eq. 3.2").words()).isEqualTo("EN 1992-1-1 Eq. 3.2 (seen)");
        assertThat(Source.memory("IRC R506.1").words()).isEqualTo("IRC R506.1 (from memory)");
        assertThat(Source.practice("own log").words()).isEqualTo("own log (common practice, no source)");
        assertThat(Source.PRACTICE.words()).isEqualTo("common practice, no source");
        assertThat(Source.ARITHMETIC.words()).isEqualTo("arithmetic");
    }

    @Test
    void findings_weigh_differently() {
        assertThat(Finding.note("A.")).isEqualTo(new Finding(Finding.Weight.NOTE, "A."));
        assertThat(Finding.warning("A.")).isEqualTo(new Finding(Finding.Weight.WARNING, "A."));
        assertThat(Finding.engineer("A."))
                .isEqualTo(new Finding(Finding.Weight.ENGINEER, "A. Ask a licensed engineer."));
    }

    @Test
    void a_table_has_as_many_amounts_in_each_row_as_headings() {
        List<Amount> two = List.of(Amount.days(1), Amount.percent(0.5));
        assertThat(new Table("T", List.of("Day", "Share"), List.of(two)).rows()).containsExactly(two);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Table("T", List.of("Day"), List.of(two)))
                .withMessageStartingWith("row [")
                .withMessageEndingWith("of table [T] must have 1 amounts");
    }

    @Test
    void what_is_handed_out_cannot_be_changed() {
        List<Curve.Point> points = new ArrayList<>(List.of(new Curve.Point(0, 0)));
        Curve curve = new Curve("c", "x", "y", points, new ArrayList<>());
        points.clear();
        assertThat(curve.points()).hasSize(1);
        assertThatExceptionOfType(UnsupportedOperationException.class)
                .isThrownBy(() -> new Sheet().add(STEP).done().lines().clear());
    }
}
