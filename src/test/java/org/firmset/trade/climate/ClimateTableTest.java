package org.firmset.trade.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ClimateTableTest {
    private static final String TABLE = """
            month,mean_high_degC,mean_low_degC,wet_days,sun_hours,rain_mm,wind_m_s
            1,6.2,-9.3,5.5,3.1,13,3.8
            2,8.4,-7.2,5.6,4,12.4,3.9
            3,12.1,-3.7,8.6,5.1,32.5,4.3
            4,16.1,1.2,9,5.9,49,4.6
            5,21.4,6.6,10.6,6.2,58.9,4.3
            6,27.8,11.7,8.6,6.7,39.6,4.1
            7,31.1,14.8,9,6.6,54.9,3.8
            8,30,14.1,8.8,6.2,46.2,3.6
            9,25.2,8.5,6.6,5.6,29,3.6
            10,18.9,2.2,5.3,4.6,25.1,3.6
            11,10.8,-4.7,5.3,3.4,24.9,3.7
            12,6.7,-8.7,5.2,2.8,16,3.7
            """.replace("\n", "\r\n");

    @Test
    void what_is_written_is_what_was_read() {
        YearClimate climate = ClimateTable.read(TABLE).climate().orElseThrow();
        assertThat(ClimateTable.write(climate)).isEqualTo(TABLE);
        assertThat(climate.months().get(6)).isEqualTo(new MonthClimate(31.1, 14.8, 9, 6.6, 54.9, 3.8));
    }

    @Test
    void columns_and_months_may_come_in_any_order_quoted_with_other_line_ends_and_a_mark_before() {
        String[] lines = TABLE.split("\r\n");
        StringBuilder turned = new StringBuilder("\uFEFF");
        turned.append("wet_days,\"month\", mean_low_degC,sun_hours,mean_high_degC\n\n");
        for (int i = 12; i >= 1; i--) {
            String[] f = lines[i].split(",");
            turned.append("%s,\"%s\",%s,%s, %s\n".formatted(f[3], f[0], f[2], f[4], f[1]));
        }
        YearClimate climate = ClimateTable.read(turned.toString()).climate().orElseThrow();
        assertThat(climate.months().getFirst()).isEqualTo(new MonthClimate(6.2, -9.3, 5.5, 3.1, null, null));
        assertThat(ClimateTable.write(climate)).contains("\r\n1,6.2,-9.3,5.5,3.1,,\r\n");
        assertThat(ClimateTable.read(ClimateTable.write(climate)).climate()).contains(climate);
    }

    @Test
    void fahrenheit_inches_and_miles_an_hour_are_read_too() {
        String us = TABLE.replace("high_degC", "high_degF")
                .replace("rain_mm", "rain_in")
                .replace("wind_m_s", "wind_mph")
                .replace("1,6.2,-9.3,5.5,3.1,13,3.8", "1,43.2,-9.3,5.5,3.1,0.51,8.5")
                .replaceAll("(?m)^(12|11|10|[2-9]),([^,]*)", "$1,90");
        MonthClimate january =
                ClimateTable.read(us).climate().orElseThrow().months().getFirst();
        assertThat(january.meanHighCelsius()).isCloseTo(6.2222, within(0.001));
        assertThat(january.rainMillimetres()).isCloseTo(12.954, within(1e-9));
        assertThat(january.windMetresPerSecond()).isCloseTo(3.79984, within(1e-9));
    }

    @Nested
    class Faults {
        @Test
        void name_line_column_and_remedy_all_at_once() {
            String bad = TABLE.replace("3,12.1,-3.7,8.6", "3,12.1,cold,8.6")
                    .replace("2,8.4,-7.2,5.6", "2,8.4,-7.2,29")
                    .replace("6,27.8,11.7", "6,11.7,27.8")
                    .replace("9,25.2", "8,25.2")
                    .replace("10,18.9", "10,189");
            assertThat(texts(bad))
                    .containsExactly(
                            "Line 3, wet_days [29.0] is over the 28.25 days of the month. Write at most 28.25.",
                            "Line 4, mean_low_degC [cold] is not a number. Write a number such as 12.5, with a point.",
                            "Line 7, mean_high_degC is under the low of the month. Swap them, or look at their signs.",
                            "Line 10, month [8] stands there twice. Keep one line for each month.",
                            "Line 11, mean_high_degC [189] is out of range. Write what is from -60 to 60 in mean_high_degC.",
                            "The table, month [9] is missing. Add a line for every month.");
            assertThat(ClimateTable.read(bad).climate()).isEmpty();
        }

        @Test
        void missing_months_are_named() {
            assertThat(texts(TABLE.replaceAll("(?m)^(4|12),.*\r\n", "")))
                    .containsExactly("The table, month [4, 12] is missing. Add a line for every month.");
            assertThat(texts(""))
                    .singleElement()
                    .asString()
                    .contains("[1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] is missing");
        }

        @Test
        void wrong_columns_are_told_before_any_line_is_read() {
            assertThat(texts(TABLE.replace("wet_days", "wetness")))
                    .containsExactly(
                            "Line 1, wetness is not a column of this table. Write one of month, mean_high_degC, mean_high_degF,"
                                    + " mean_low_degC, mean_low_degF, wet_days, sun_hours, rain_mm, rain_in, wind_m_s, wind_km_h,"
                                    + " wind_mph.",
                            "Line 1, wet_days is missing. Add a column wet_days.");
            assertThat(texts(TABLE.replace("rain_mm,wind_m_s", "wind_mph,wind_m_s")))
                    .containsExactly("Line 1, wind stands there 2 times. Keep one of them.");
        }

        @Test
        void a_line_with_other_fields_than_the_header() {
            assertThat(texts(TABLE.replace("5,21.4,6.6,10.6,6.2,58.9,4.3", "5,21.4")))
                    .startsWith("Line 6 has 2 fields, the header 7. Write as many as in the header.");
        }

        @Test
        void a_quote_that_is_never_closed() {
            assertThat(texts(TABLE.replace("5,21.4", "\"5,21.4")))
                    .containsExactly(
                            "Line 6 is not comma-separated text. Close every quote; double a quote inside quotes.");
        }

        @Test
        void months_that_are_none() {
            assertThat(texts(TABLE.replace("\r\n5,", "\r\n13,")))
                    .containsExactly(
                            "Line 6, month [13] is not a month. Write 1 for January to 12 for December.",
                            "The table, month [5] is missing. Add a line for every month.");
        }

        @Test
        void a_hostile_text_is_refused_unread_and_no_more_than_fifty_faults_are_told() {
            assertThat(texts("x".repeat(20_001))).singleElement().asString().contains("longer than 20,000 characters");
            assertThat(texts("month,mean_high_degC,mean_low_degC,wet_days,sun_hours\n" + "a,b,c,d,e\n".repeat(100)))
                    .hasSize(50);
        }

        private static List<String> texts(String table) {
            return ClimateTable.read(table).faults().stream()
                    .map(TableFault::text)
                    .toList();
        }
    }

    @Test
    void records_refuse_what_the_table_would_call_a_fault() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MonthClimate(5, 6, 0, 0, null, null))
                .withMessage("meanHighCelsius [5.0] must not be under meanLowCelsius [6.0]");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MonthClimate(5, 4, 0, 15, null, null))
                .withMessage("sun_hours [15.0] must be from 0.0 to 14.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new YearClimate(List.of()))
                .withMessage("months [0] must be twelve");
    }
}
