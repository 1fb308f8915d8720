package org.firmset.trade.climate;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ForecastTableTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 5, 1);
    private static final String HEADER = "date,high_degC,low_degC,wet_percent";

    private static List<String> texts(String table) {
        return ForecastTable.read(table, TODAY).faults().stream()
                .map(TableFault::text)
                .toList();
    }

    @Test
    void days_are_read_in_any_order_of_columns_and_lines() {
        String table = """
                wet_percent,date,wind_mph,high_degF,low_degF,sun_hours
                60,2027-05-02,10,50,32,2.5
                0,2027-05-01,,68,41,
                """;
        assertThat(ForecastTable.read(table, TODAY).forecast().orElseThrow().days())
                .containsExactly(
                        new ForecastDay(TODAY, 20, 5, 0, null, null),
                        // 10 mph = 4.4704 m/s by definition of the mile
                        new ForecastDay(TODAY.plusDays(1), 10, 0, 60, 4.4704, 2.5));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2027-05-01,8,9,0 | Line 2, high_degC is under the low of the day. Swap them, or look at their signs.
            2027-05-01,9,8,30.5 | Line 2, wet_percent [30.5] is not a whole number. Write a number such as 30.
            2027-05-01,9,8,101 | Line 2, wet_percent [101] is out of range. Write what is from 0 to 100 in wet_percent.
            2027-05-01,9,x,10 | Line 2, low_degC [x] is not a number. Write a number such as 12.5, with a point.
            2027-04-30,9,8,10 | Line 2, date [2027-04-30] is past. Leave out the days before 2027-05-01.
            1 May,9,8,10 | Line 2, date [1 May] is not a date. Write it as 2027-05-01.
            2027-05-01,9,8 | Line 2 has 3 fields, the header 4. Write as many as in the header.
            '' | The table, date holds no day. Add a line for each day.
            """)
    void a_mistake_is_told_with_line_column_and_remedy(String line, String told) {
        assertThat(texts(HEADER + "\n" + line + "\n")).containsExactly(told);
    }

    @Test
    void a_date_that_stands_there_twice_is_told_where_it_stands_again() {
        assertThat(texts(HEADER + "\n2027-05-02,9,8,10\n\n2027-05-01,9,8,10\n2027-05-02,9,8,20\n"))
                .containsExactly("Line 5, date [2027-05-02] stands there twice. Keep one line for each date.");
    }

    @Test
    void a_gap_is_told() {
        assertThat(texts(HEADER + "\n2027-05-02,9,8,10\n2027-05-05,9,8,10\n"))
                .containsExactly(
                        "Line 3, date [2027-05-05] comes after a gap. Add 2027-05-03 to 2027-05-04 or leave out"
                                + " the days behind it.");
    }

    @Test
    void a_line_that_cannot_be_read_is_no_gap() {
        assertThat(texts(HEADER + "\n2027-05-02,9,8,10\n2027-05-03,9,8,x\n2027-05-04,9,8,10\n"))
                .singleElement()
                .asString()
                .startsWith("Line 3, wet_percent [x]");
    }

    @Test
    void a_column_of_another_table_is_told() {
        assertThat(texts("date,high_degC,low_degC,wet_percent,rain_mm\n"))
                .singleElement()
                .asString()
                .startsWith("Line 1, rain_mm is not a column of this table. Write one of date, high_degC, high_degF");
    }

    @Test
    void the_sun_of_a_forecast_goes_before_what_its_rain_leaves() {
        YearClimate climate =
                new YearClimate(java.util.Collections.nCopies(12, new MonthClimate(20, 5, 0, 6, null, null)));
        Forecast forecast = new Forecast(List.of(
                new ForecastDay(TODAY, 20, 5, 100, null, 4.5),
                new ForecastDay(TODAY.plusDays(1), 20, 5, 100, null, null)));
        Weather weather = new Weather(climate, WetDryChain.USUAL_PERSISTENCE, forecast);
        assertThat(weather.on(TODAY).sunHours()).isEqualTo(4.5);
        // a climate without rain has 6 h on dry days; a wet day has half of that
        assertThat(weather.on(TODAY.plusDays(1)).sunHours()).isEqualTo(3);
    }
}
