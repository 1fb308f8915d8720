package org.firmset.homestead.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.firmset.homestead.ForecastDay;
import org.firmset.homestead.Place;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.homestead.store.Changes;
import org.firmset.homestead.store.Homesteads;
import org.firmset.homestead.store.Kept;
import org.firmset.measure.UnitSystem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;

@SpringBootTest(
        properties =
                "FIRMSET_DB_URL=jdbc:h2:mem:imports;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH")
class SkyImportTest extends SpringBrowserlessTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 5, 1);
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2027-05-01T12:00:00Z"), ZoneOffset.UTC);

    @Autowired
    private Homesteads homesteads;

    @Autowired
    private Changes changes;

    private final AtomicInteger stored = new AtomicInteger();
    private UUID id;

    @BeforeEach
    void begin() {
        Changes.Change begun = changes.add(SeedHomesteads.empty("Field", UnitSystem.METRIC, TODAY));
        assertThat(begun).isInstanceOf(Changes.Change.Stored.class);
        id = homesteads.opened().orElseThrow();
    }

    private Kept kept() {
        return homesteads.find(id).orElseThrow();
    }

    private Place place() {
        return kept().homestead().place();
    }

    private SkyImport panel() {
        return new SkyImport(changes, kept(), CLOCK, stored::incrementAndGet);
    }

    private static String text(SkyImport panel) {
        return panel.getElement().getTextRecursively();
    }

    private static String normals(int months) {
        StringBuilder table =
                new StringBuilder("month,mean_high_degC,mean_low_degC,wet_days,sun_hours,rain_mm,wind_m_s\n");
        for (int month = 1; month <= months; month++) {
            table.append("%1$d,%1$d,0,5,4.5,31.5,3\n".formatted(month));
        }
        return table.toString();
    }

    @Test
    void twelve_normals_are_taken_and_told_to_the_page() {
        panel().takeNormals(normals(12));
        assertThat(stored).hasValue(1);
        assertThat(place().climate()).hasSize(12);
        assertThat(place().climate().getLast().meanHigh()).hasToString("12 degC");
        assertThat(place().climate().getFirst().rain()).hasToString("0.0315 m");
        assertThat(place().climate().getFirst().wind()).hasToString("3 m/s");
    }

    @Test
    void a_table_with_a_month_missing_changes_nothing_and_says_so() {
        SkyImport panel = panel();
        panel.takeNormals(normals(11));
        assertThat(stored).hasValue(0);
        assertThat(place().climate()).isEmpty();
        assertThat(text(panel))
                .contains("The table is not accepted; nothing was changed.", "The table, month [12] is missing");
    }

    @Test
    void a_forecast_is_taken_and_a_faulty_one_leaves_it_as_it_was() {
        panel().takeForecast("date,high_degC,low_degC,wet_percent\n2027-05-01,12,3,40\n2027-05-02,14,4,0\n");
        assertThat(place().forecast()).extracting(ForecastDay::date).containsExactly(TODAY, TODAY.plusDays(1));
        assertThat(place().forecast().getFirst().wetPercent()).isEqualTo(40);
        SkyImport panel = panel();
        panel.takeForecast("date,high_degC,low_degC,wet_percent\n2027-04-30,12,3,40\n");
        assertThat(text(panel)).contains("Line 2, date [2027-04-30] is past");
        assertThat(place().forecast()).hasSize(2);
        assertThat(stored).hasValue(1);
    }

    @Test
    void a_change_by_somebody_else_meanwhile_is_not_lost() {
        SkyImport late = panel();
        panel().takeNormals(normals(12));
        late.takeForecast("date,high_degC,low_degC,wet_percent\n2027-05-01,12,3,40\n");
        assertThat(place().forecast()).isEmpty();
        assertThat(place().climate()).hasSize(12);
        assertThat(stored).hasValue(1);
    }
}
