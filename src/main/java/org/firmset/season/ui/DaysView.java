package org.firmset.season.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.firmset.homestead.Cautions;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.store.Homesteads;
import org.firmset.season.Seasons;
import org.firmset.season.day.DayOutlook;
import org.firmset.season.day.DayOutlookWriter;
import org.firmset.season.day.DayPowerWords;
import org.firmset.season.day.DayWords;
import org.firmset.season.day.MonthOutlook;
import org.firmset.season.report.PlannedDays;
import org.firmset.season.result.SeasonReport;
import org.firmset.season.words.Dates;
import org.firmset.season.words.WordTable;
import org.firmset.shell.Frame;

/** What a date can hold: its light, its weather, the odds of stages, and how the battery goes with the work planned for it. */
@Route(value = "season/day/:date?", layout = Frame.class)
@PageTitle("Firmset: days")
class DaysView extends SeasonPage {
    private static final int FIRST_YEAR = 1990;
    private static final int LAST_YEAR = 2199;

    private Optional<LocalDate> asked = Optional.empty();

    DaysView(Homesteads homesteads, Seasons seasons) {
        super(homesteads, seasons);
        addClassName("fs-days");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        super.beforeEnter(event);
        asked = event.getRouteParameters().get("date").map(DaysView::date);
        // going from day to day does not attach the page anew
        showAgain();
    }

    private static LocalDate date(String text) {
        try {
            LocalDate date = LocalDate.parse(text);
            if (date.getYear() >= FIRST_YEAR && date.getYear() <= LAST_YEAR) {
                return date;
            }
        } catch (DateTimeException e) {
            throw new NotFoundException("'" + text + "' is not a date");
        }
        throw new NotFoundException("'" + text + "' is too far away");
    }

    @Override
    void show(Homestead homestead, SeasonReport report) {
        List<LocalDate> planned = PlannedDays.dates(report);
        LocalDate date = asked.or(() -> planned.stream()
                        .filter(d -> !d.isBefore(report.statusDate()))
                        .findFirst())
                .orElse(report.statusDate());
        DayOutlookWriter writer = new DayOutlookWriter(homestead);
        DayOutlook day = writer.of(PlannedDays.upTo(report, homestead, date, writer.people(date)));
        DayWords words = new DayWords(homestead.units());
        add(new H1(Dates.date(date)), choice(planned, date), new Paragraph(trip(report, date)));
        add(section("Light and weather", new TablePanel(words.light(day)), new TablePanel(words.weather(day))));
        add(power(day));
        if (!day.odds().isEmpty()) {
            WordTable odds = words.odds(day);
            add(section(odds.title(), new TablePanel(odds)));
        }
        opened().ifPresent(id -> add(new MorePowerPanel(seasons(), id)));
        year(homestead, date);
        add(cautions(day));
    }

    private static String trip(SeasonReport report, LocalDate date) {
        return PlannedDays.trip(report, date)
                .map(t -> "A day of trip %d, %s.".formatted(t.number(), Dates.span(t.firstDate(), t.lastDate())))
                .orElse("No trip is planned on this date.");
    }

    private static Div choice(List<LocalDate> planned, LocalDate date) {
        Div choice = new Div();
        choice.addClassNames("fs-trip-choice", "fs-no-print");
        planned.stream()
                .filter(d -> d.isBefore(date))
                .reduce((a, b) -> b)
                .ifPresent(d -> choice.add(new Anchor(SeasonPages.day(d), "Earlier site day")));
        choice.add(picker(date));
        planned.stream()
                .filter(d -> d.isAfter(date))
                .findFirst()
                .ifPresent(d -> choice.add(new Anchor(SeasonPages.day(d), "Later site day")));
        return choice;
    }

    private static DatePicker picker(LocalDate date) {
        DatePicker picker = new DatePicker("Date", date);
        picker.setLocale(Locale.UK);
        // 5/1 is May in one country and January in the other; this way of writing is the same everywhere
        picker.setI18n(new DatePicker.DatePickerI18n().setDateFormat("yyyy-MM-dd"));
        picker.addValueChangeListener(e -> {
            if (e.getValue() != null) {
                UI.getCurrent().navigate(SeasonPages.day(e.getValue()));
            }
        });
        return picker;
    }

    private static Section section(String title, Component... content) {
        Section section = new Section(new H2(title));
        section.add(content);
        section.addClassName("fs-block");
        return section;
    }

    private static Section power(DayOutlook day) {
        Section section = section("Battery and work");
        if (day.power().isEmpty()) {
            section.add(new Paragraph("There is no power on site."));
        }
        DayPowerWords.sentences(day).forEach(s -> section.add(new Paragraph(s)));
        day.power().ifPresent(p -> {
            section.add(Drawn.frame(new ChargeDrawing(day, p).svg(), "Battery, sun and work of the day"));
            Paragraph key =
                    new Paragraph("The line is the charge, the dot where least is left above the limit. The filled"
                            + " strip is the sun counted on. Work lies one after the other from the start, the thirstiest first, as"
                            + " long as its labour takes the people who are there; meals are not drawn. The battery is full when"
                            + " the trip begins.");
            key.addClassName("fs-terms");
            section.add(key);
        });
        if (!day.work().isEmpty()) {
            WordTable work = DayPowerWords.work(day);
            section.add(new H3(work.title()), new TablePanel(work));
        }
        day.power().ifPresent(p -> section.add(figures(DayPowerWords.hours(day, p))));
        return section;
    }

    /** What a drawing says, for whoever wants or needs it in figures. */
    private static NativeDetails figures(WordTable table) {
        return new NativeDetails(table.title(), new TablePanel(table));
    }

    private void year(Homestead homestead, LocalDate date) {
        List<MonthOutlook> months = MonthOutlook.of(homestead, date.getYear());
        if (!months.isEmpty()) {
            Section section = section("The year", Drawn.frame(new MonthsDrawing(months).svg(), "The twelve months"));
            section.add(figures(MonthOutlook.table(months)));
            add(section);
        }
    }

    private static Section cautions(DayOutlook day) {
        UnorderedList list = new UnorderedList();
        day.cautions().forEach(c -> list.add(new ListItem(c)));
        Paragraph standing = new Paragraph(Cautions.STANDING);
        standing.addClassName("fs-standing");
        return section("Cautions", list, standing);
    }
}
