package org.firmset.homestead.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.homestead.file.Document.faults;
import static org.firmset.homestead.file.Document.sound;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.firmset.homestead.SpendingLimit;
import org.firmset.homestead.Tool;
import org.firmset.measure.Cash;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HomesteadFileTest {
    private static final char MARK = '|';

    private static void onlyFault(List<Fault> faults, String pointer, String value, String problem, String remedy) {
        assertThat(faults).singleElement().satisfies(fault -> {
            assertThat(fault.pointer()).isEqualTo(pointer);
            assertThat(fault.value()).isEqualTo(value);
            assertThat(fault.problem()).isEqualTo(problem);
            assertThat(fault.remedy()).isEqualTo(remedy);
        });
    }

    @Test
    void a_sound_file_is_accepted_and_reads_back_equal() {
        assertThat(sound().read())
                .isInstanceOfSatisfying(
                        Reading.Accepted.class,
                        accepted -> assertThat(HomesteadFile.read(HomesteadFile.bytes(accepted.homestead())))
                                .isEqualTo(accepted));
    }

    @Test
    void a_file_may_come_as_a_stream_and_name_its_schema() throws IOException {
        String text = sound().with("/$schema", "\"homestead.schema.json\"").text();
        assertThat(HomesteadFile.read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8))))
                .isInstanceOf(Reading.Accepted.class);
    }

    @Test
    void what_may_be_left_out_may_be_null() {
        assertThat(sound().with("/power", "null")
                        .with("/spendingLimit", "null")
                        .with("/tools/0/allDay", "null")
                        .with("/stages/0/progress", "null")
                        .faults())
                .isEmpty();
    }

    @Test
    void a_tool_of_which_nothing_is_said_passes_from_hand_to_hand() {
        assertThat(tool(sound())).isEqualTo(tool(sound().with("/tools/0/allDay", "false")));
        assertThat(tool(sound()).allDay()).isFalse();
        assertThat(tool(sound().with("/tools/0/allDay", "true")).allDay()).isTrue();
    }

    private static Tool tool(Document document) {
        return ((Reading.Accepted) document.read()).homestead().tools().getFirst();
    }

    @Test
    void a_homestead_has_a_spending_limit_only_when_one_is_written() {
        assertThat(limit(sound())).isEqualTo(new SpendingLimit(Cash.ofCents(90_000, "USD"), true));
        assertThat(limit(sound().without("/spendingLimit"))).isNull();
    }

    private static @Nullable SpendingLimit limit(Document document) {
        return ((Reading.Accepted) document.read()).homestead().spendingLimit();
    }

    @Test
    void a_fault_is_told_in_one_line() {
        assertThat(new Fault("/stages/0/crew", "0", "is too small", "The least is 1").line())
                .isEqualTo("/stages/0/crew [0] is too small. The least is 1.");
        assertThat(new Fault("", "", "is not a JSON object", "Start it with {").line())
                .isEqualTo("The file is not a JSON object. Start it with {.");
    }

    @Test
    void a_told_fault_holds_no_control_characters_of_the_file() {
        String escape = "\u001b[2J\u0007";
        assertThat(new Fault("/a" + escape, "b" + escape, "is not known here", "Take it out").line())
                .matches("\\P{Cntrl}+");
    }

    @Nested
    class Values {
        @ParameterizedTest(name = "{0} = {1}: {3}")
        @CsvSource(delimiter = MARK, quoteCharacter = '`', textBlock = """
            /stages/0/labour                 | "-1 h"              | -1 h            | is not a time                        | Write hours such as '6.5 h' or '6 h 30 min'
            /stages/0/labour                 | "0 h"               | 0 h             | is too little                        | The least is 0.25 h
            /stages/0/labour                 | "2000.25 h"         | 2000.25 h       | is too much                          | The most is 2000 h
            /stages/0/labour                 | "20 min"            | 20 min          | is not a whole number of quarter-hours | Write '6.25 h' or '6 h 15 min'
            /stages/0/labour                 | 12                  | 12              | is not a text                        | Write it in quotes
            /stages/0/crew                   | 0                   | 0               | is too small                         | The least is 1
            /stages/0/crew                   | 51                  | 51              | is too large                         | The most is 50
            /stages/0/crew                   | -2                  | -2              | is too small                         | The least is 1
            /stages/0/crew                   | "2"                 | 2               | is not a whole number                | Write a whole number
            /stages/0/crew                   | 1.5                 | 1.5             | is not a whole number                | Write a whole number
            /stages/0/crew                   | 1e999999            | 1E+999999       | is not a whole number                | Write a whole number
            /stages/0/crew                   | 99999999999         | 99999999999     | is not a whole number                | Write a whole number
            /stages/0/layout                 | "split"             | split           | is not one of the words understood here | Write one of in-one-go, splittable, unbroken-days
            /stages/0/layout                 | "SPLITTABLE"        | SPLITTABLE      | is not one of the words understood here | Write one of in-one-go, splittable, unbroken-days
            /stages/0/key                    | "Dig Footings"      | Dig Footings    | is not a key                         | Use lower-case letters, digits and hyphens, at most 60
            /stages/0/name                   | " "                 | ` `             | is empty                             | Write at least one letter
            /stages/1/season/from            | "04-15"             | 04-15           | is not a date                        | Write it as '--05-01'
            /stages/1/season/from            | "--02-30"           | --02-30         | is not a date                        | Write it as '--05-01'
            /stages/1/notAfter               | "2027-02-30"        | 2027-02-30      | is not a date                        | Write it as '2027-05-01'
            /stages/1/notAfter               | "1.9.2027"          | 1.9.2027        | is not a date                        | Write it as '2027-05-01'
            /stages/1/notAfter               | "+999999999-12-31"  | +999999999-12-31 | is too far away                     | Use a date from 1990-01-01 to 2199-12-31
            /stages/1/conditions/dryDay      | "yes"               | yes             | is neither true nor false            | Write true or false without quotes
            /place/latitude                  | 90.1                | 90.1            | is too large                         | The most is 90
            /place/latitude                  | 1e999999            | 1E+999999       | is out of all proportion             | Write a smaller number
            /place/latitude                  | 1e-999999           | 1E-999999       | is out of all proportion             | Write a smaller number
            /place/latitude                  | "39 N"              | 39 N            | is not a number                      | Write a number without quotes
            /materials/0/mass                | "-80 lb"            | -80 lb          | is too small                         | The least is 0 kg
            /materials/0/mass                | "41 t"              | 41 t            | is too large                         | The most is 40 t
            /subprojects/0/budget            | "-1.00 USD"         | -1.00 USD       | is negative                          | Write an amount of 0 or more
            /subprojects/0/budget            | "1.00 QQQ"          | 1.00 QQQ        | is not a currency                    | Write its ISO 4217 code such as 'USD'
            /subprojects/0/budget            | "9000"              | 9000            | is not an amount of money            | Write it such as '12.40 USD'
            /subprojects/0/budget            | "999999999999.99 USD" | 999999999999.99 USD | is too much                    | The most is 10000000000
            /spendingLimit/aMonth            | "-0.01 USD"         | -0.01 USD       | is negative                          | Write an amount of 0 or more
            /spendingLimit/aMonth            | "400"               | 400             | is not an amount of money            | Write it such as '12.40 USD'
            /spendingLimit/firm              | "yes"               | yes             | is neither true nor false            | Write true or false without quotes
            /spendingLimit                   | "400.00 USD"        | "400.00 USD"    | is not an object                     | Write it in { }
            /tools/0/allDay                  | "yes"               | yes             | is neither true nor false            | Write true or false without quotes
            /subprojects/0/priority          | 1001                | 1001            | is too large                         | The most is 1000
            /stages                          | {}                  | {}              | is not a list                        | Write it in [ ]
            /stages/0                        | "dig"               | "dig"           | is not an object                     | Write it in { }
            /place                           | []                  | []              | is not an object                     | Write it in { }
            /openDates/removed/0             | 20270605            | 20270605        | is not a text                        | Write it in quotes
            """)
        void are_refused_one_by_one(String pointer, String json, String value, String problem, String remedy) {
            onlyFault(sound().with(pointer, json).faults(), pointer, value, problem, remedy);
        }

        @ParameterizedTest(name = "{0} = {1}: {2}")
        @CsvSource(delimiter = MARK, textBlock = """
            /materials/0/mass   | "80 ft"  | has the unit 'ft', which is no unit of mass        | Write a mass such as '80 lb'
            /materials/0/mass   | "80"     | is not a number with its unit                      | Write a mass such as '80 lb'
            /materials/0/volume | "3 m"    | has the unit 'm', which is no unit of volume       | Write a volume such as '0.6 ft3'
            /tools/0/draw       | "2 kWh"  | has the unit 'kWh', which is no unit of power      | Write a power such as '900 W'
            /power/capacity     | "200 Ah" | has the unit 'Ah', which is no unit of energy      | Write an energy such as '2.4 kWh'
            """)
        void with_a_wrong_unit_are_told_the_right_ones(String pointer, String json, String problem, String remedy) {
            assertThat(sound().with(pointer, json).faults()).singleElement().satisfies(fault -> {
                assertThat(fault.pointer()).isEqualTo(pointer);
                assertThat(fault.problem()).isEqualTo(problem);
                assertThat(fault.remedy()).startsWith(remedy).contains("with one of the units");
            });
        }

        @Test
        void that_are_missing_are_named_with_what_they_mean() {
            onlyFault(
                    sound().without("/stages/0/labour").faults(),
                    "/stages/0/labour",
                    "",
                    "is missing",
                    "Labour of all people together");
        }

        @Test
        void that_are_not_known_are_named_with_those_that_are() {
            assertThat(sound().with("/stages/0/labor", "\"12 h\"").faults())
                    .singleElement()
                    .satisfies(fault -> {
                        assertThat(fault.pointer()).isEqualTo("/stages/0/labor");
                        assertThat(fault.problem()).isEqualTo("is not known here");
                        assertThat(fault.remedy()).startsWith("Known are key, name, subproject, labour, crew");
                    });
        }

        @Test
        void with_control_characters_are_refused() {
            assertThat(sound().with("/name", "\"North\\u0007Fork\"").faults())
                    .singleElement()
                    .extracting(Fault::pointer, Fault::problem, Fault::remedy)
                    .containsExactly("/name", "holds control characters", "Take them out");
        }

        @Test
        void with_half_a_character_are_refused() {
            String text = sound().with("/name", "\"HALF\"").text().replace("HALF", "North \\ud83d Fork");
            assertThat(faults(text))
                    .singleElement()
                    .extracting(Fault::pointer, Fault::problem, Fault::remedy)
                    .containsExactly("/name", "holds half a character", "Write it again");
        }

        @Test
        void that_are_longer_than_anybody_reads_are_refused() {
            assertThat(sound().with("/stages/0/note", "\"" + "x".repeat(2001) + "\"")
                            .faults())
                    .singleElement()
                    .satisfies(fault -> {
                        assertThat(fault.pointer()).isEqualTo("/stages/0/note");
                        assertThat(fault.value()).hasSizeLessThan(100);
                        assertThat(fault.problem()).isEqualTo("is too long");
                    });
        }
    }

    @Nested
    class Parts {
        @ParameterizedTest(name = "{0} = {1}: {4}")
        @CsvSource(delimiter = MARK, quoteCharacter = '`', textBlock = """
            /stages/0/subproject         | "barn"       | /stages/0/subproject         | barn        | names a subproject that is not there          | Write the key of a subproject of this file
            /stages/1/needs/0/material   | "cemnt"      | /stages/1/needs/0/material   | cemnt       | names a material that is not there            | Write the key of a material of this file. Maybe 'cement' is meant
            /waits/0/from                | "dug"        | /waits/0/from                | dug         | names a stage that is not there               | Write the key of a stage of this file
            /travel/vehicle              | "truck"      | /travel/vehicle              | truck       | names a vehicle that is not there             | Write the key of a vehicle of this file
            /travel/trailer              | "boat"       | /travel/trailer              | boat        | names a trailer that is not there             | Write the key of a trailer of this file
            /openDates/rules/0/people/1  | "cy"         | /openDates/rules/0/people/1  | cy          | names a person that is not there              | Write the key of a person of this file
            /stages/0/tools/0            | "saw"        | /stages/0/tools/0            | saw         | names a tool that is not there                | Write the key of a tool of this file
            /stages/3                    | {"key": "dig", "name": "D", "subproject": "shop", "labour": "1 h", "crew": 1, "layout": "splittable"} | /stages/3/key | dig         | is the key of another stage already           | Give each stage a key of its own
            /people/2                    | {"key": "ann", "name": "A", "mass": "50 kg", "workShare": 90} | /people/2/key | ann         | is the key of another person already          | Give each person a key of its own
            /currency                    | "EUR"        | /travel/costPerTrip          | 60.00 USD   | is not in the homestead's currency            | Write all amounts in EUR, or change /currency
            /currency                    | "dollars"    | /currency                    | dollars     | is not a currency                             | Write its ISO 4217 code such as USD or EUR
            /place/timeZone              | "Denver"     | /place/timeZone              | Denver      | is not a time zone                            | Write an IANA name such as America/Denver
            /suppliers/0/prices/0/amount | "7.50 EUR"   | /suppliers/0/prices/0/amount | 7.50 EUR    | is not in the homestead's currency            | Write all amounts in USD, or change /currency
            /spendingLimit/aMonth        | "400.00 EUR" | /spendingLimit/aMonth        | 400.00 EUR  | is not in the homestead's currency            | Write all amounts in USD, or change /currency
            /openDates/rules/0/to        | "2027-04-30" | /openDates/rules/0/to        | 2027-04-30  | is before the first date 2027-05-01           | Write the later date as the last
            /openDates/rules/0/to        | "2037-05-02" | /openDates/rules/0/to        | 2037-05-02  | is more than 10 years after the first date    | Write a nearer date
            /openDates/rules/0/weekdays  | []           | /openDates/rules/0/weekdays  | ``          | names no weekday                              | Write at least one, such as saturday
            /openDates/rules/0/people    | []           | /openDates/rules/0/people    | ``          | names nobody                                  | Write the key of at least one person
            /openDates/rules/0/people    | ["ann","ann"] | /openDates/rules/0/people   | ann, ann    | names somebody twice                          | Write each person once
            /suppliers/0/delivery/weekdays | []         | /suppliers/0/delivery/weekdays | ``        | names no weekday                              | Write at least one, such as saturday
            /suppliers/0/delivery/leastOrder | "90.00 USD" | /suppliers/0/delivery/leastOrder | 90.00 USD | says nothing of what a smaller order costs | Write smallOrderFee as well, 0 when there is none, or leave both out
            /suppliers/0/delivery/smallOrderFee | "9.00 USD" | /suppliers/0/delivery/smallOrderFee | 9.00 USD | says nothing of which order is a small one | Write leastOrder as well, or leave both out
            /suppliers/0/delivery/placeWithin | "1.5 h"   | /suppliers/0/delivery/placeWithin | 1.5 h | is for what is used on the day it comes, but 'cement' keeps longer | Write 0 as the shelf life of 'cement', or sell it under another supplier
            /place/softMonths            | ["january","february","march","april","may","june","july","august","september","october","november","december"] | /place/softMonths | all twelve | leaves no month in which a truck could come | Take out the months in which the track bears one, or take the delivery out at the suppliers
            /materials/0/mass            | "5 t"        | /suppliers/0/delivery/largestMass | 4000 kg | leaves room for no pack of 'cement', 5000 kg, which fits no vehicle either | Ask for a larger truck, or write a smaller pack
            /stages/0/leastBlock         | "9 h"        | /stages/0/leastBlock         | 9 h         | is over the most it can take on one day, 8 h  | Write less here or more there
            /stages/1/mostPerDay         | "5 h"        | /stages/1/mostPerDay         | 5 h         | is under the labour 6 h of a stage that is done in one go | Leave it out, or write 'splittable' as the layout
            /stages/1/notAfter           | "2027-04-30" | /stages/1/notAfter           | 2027-04-30  | is before the first possible date 2027-05-01  | Write the later date here
            /stages/0/progress/labourLeft | "13 h"      | /stages/0/progress/labourLeft | 13 h       | is more than the stage's labour 12 h          | Write less here, or more labour for the stage
            /stages/0/progress/labourLeft | "0 h"       | /stages/0/progress/labourLeft | 0 h        | is left but the stage is not finished         | Exactly a finished stage has 0 h left and a date in finishedOn
            /waits/0/to                  | "dig"        | /waits/0/to                  | dig         | is the stage before as well                   | Name two different stages
            /waits/1/mostDays            | 6            | /waits/1/mostDays            | 6           | is under the least days 7                     | Write at least 7
            /waits/1/cure                | {"strengthPercent": 70, "cement": "normal"} | /waits/1/cure | 70 % | cannot be reckoned without the temperatures of the place | Write the twelve months in /place/climate, or leave the cure out and use leastDays
            /vehicles/0/emptyMass        | "7000 lb"    | /vehicles/0/emptyMass        | 3175.14659 kg | with the standing kit 45.359237 kg is not under the gross rating 3175.14659 kg | Weigh the vehicle, or read its rating again
            /trailers/0/emptyMass        | "3000 lb"    | /trailers/0/emptyMass        | 1360.77711 kg | is not under the gross rating 1360.77711 kg | Weigh the trailer, or read its rating again
            /vehicles/0/towRating        | "700 lb"     | /travel/trailer              | flatbed     | is heavier than the vehicle 'pickup' may tow  | Write its tow rating at the vehicle, or leave the trailer at home
            /vehicles/0/axles/frontEmpty | "5100 lb"    | /vehicles/0/axles/frontEmpty | 2313.321087 kg | leaves nothing of the empty mass 2313.321087 kg for the rear axle | Write what a scale shows under the front axle alone
            /vehicles/0/axles/frontRating | "2900 lb"   | /vehicles/0/axles/frontRating | 1315.417873 kg | is under what the front axle carries of the empty vehicle, 1360.77711 kg | Read the rating again, or weigh the front axle again
            /vehicles/0/axles/rearRating | "2000 lb"    | /vehicles/0/axles/rearRating | 907.18474 kg | is under what the rear axle carries of the empty vehicle, 952.543977 kg | Read the rating again, or weigh the front axle again
            /vehicles/0/axles/hitch      | "48 in"      | /vehicles/0/axles/hitch      | 1.2192 m    | is in front of the rear axle, which lies 3.683 m behind the front one | Measure from the front axle, not from the rear one
            /vehicles/0/axles/hitch      | null         | /vehicles/0/axles/hitch      | ``          | is needed for a vehicle that tows             | Measure from the front axle to the ball, or leave the trailer at home
            /vehicles/0/axles/bayFront   | "145 in"     | /vehicles/0/axles/bayFront   | 3.683 m     | puts the rear end of the bay 5.6642 m behind the front axle, more than half a wheelbase behind the rear one | Measure from the front axle to the front edge of the bay, and the bay's length
            /trailers/0/deck/axle        | "200 in"     | /trailers/0/deck/axle        | 5.08 m      | puts the middle of the empty trailer, with 12 % on its tongue, 4.4704 m behind the coupler; its deck lies from 0.9144 m to 3.9624 m | Measure coupler, deck and axle again, or weigh the tongue
            /trailers/0/deck/axleRating  | "600 lb"     | /trailers/0/deck/axleRating  | 272.155422 kg | is under what the axle carries of the empty trailer, 279.41289992 kg | Read the rating again, or weigh the trailer
            /pins/0/dates                | []           | /pins/0/dates                | ``          | holds no date                                 | Write at least one date
            /pins/1                      | {"stage": "pour", "dates": ["2027-06-12"], "why": "x"} | /pins/1/stage | pour | is pinned twice           | Write all its dates in one pin
            /stages/1/needs/1            | {"material": "cement", "packs": 1} | /stages/1/needs/1/material | cement | is needed twice by the same stage | Add the packs up in one need
            /openDates/added/1           | {"date": "2027-07-05", "siteHours": "7 h", "people": ["bo"]} | /openDates/added/1/date | 2027-07-05 | was added before | Write each added date once
            """)
        void that_contradict_each_other_are_refused(
                String change, String json, String pointer, String value, String problem, String remedy) {
            List<Fault> faults = sound().with(change, json).faults();
            assertThat(faults).isNotEmpty();
            onlyFault(change.equals("/currency") ? faults.subList(0, 1) : faults, pointer, value, problem, remedy);
        }

        @Test
        void a_truck_that_the_track_does_not_bear_empty_is_refused() {
            onlyFault(
                    sound().with("/place/trackLimit", "\"9 t\"")
                            .with("/suppliers/0/delivery/truckEmptyMass", "\"9 t\"")
                            .faults(),
                    "/suppliers/0/delivery/truckEmptyMass",
                    "9000 kg",
                    "is not under the limit of the track, 9000 kg",
                    "Ask for a smaller truck, look at /place/trackLimit again, or take the delivery out");
        }

        @Test
        void a_track_that_bears_the_truck_but_no_pack_is_named_with_the_largest_mass() {
            onlyFault(
                    sound().with("/place/trackLimit", "\"10 t\"")
                            .with("/suppliers/0/delivery/truckEmptyMass", "\"9 t\"")
                            .with("/materials/0/mass", "\"1.5 t\"")
                            .faults(),
                    "/suppliers/0/delivery/largestMass",
                    "4000 kg",
                    "leaves room for no pack of 'cement', 1500 kg, which fits no vehicle either",
                    "Ask for a larger truck, or write a smaller pack; the track bears 10000 kg");
        }

        @Test
        void ready_mix_with_nobody_there_is_refused() {
            onlyFault(
                    sound().with("/suppliers/0/delivery/placeWithin", "\"1.5 h\"")
                            .with("/suppliers/0/delivery/attended", "false")
                            .with("/materials/0/shelfLifeDays", "0")
                            .faults(),
                    "/suppliers/0/delivery/attended",
                    "false",
                    "leaves ready-mix with nobody there to place it",
                    "Write true, or leave placeWithin out");
        }

        @Test
        void a_circle_of_waits_is_named_stage_by_stage() {
            onlyFault(
                    sound().with("/waits/2", """
                                    {"key": "back", "name": "Back", "kind": "follows", "from": "frame", "to": "dig",
                                     "leastDays": 0}
                                    """).faults(),
                    "/waits",
                    "",
                    "lead in a circle, so none of these can ever start: Dig footings (dig), then Pour slab (pour), then"
                            + " Raise frame (frame), then Dig footings (dig)",
                    "Take out or turn round one of the waits between them");
        }

        @Test
        void eleven_months_are_no_year() {
            String month = "{\"meanHigh\": \"5 degC\", \"meanLow\": \"1 degC\", \"wetDays\": 3, \"sunHours\": 4}";
            String months = IntStream.range(0, 11).mapToObj(i -> month).collect(Collectors.joining(",", "[", "]"));
            onlyFault(
                    sound().with("/place/climate", months).faults(),
                    "/place/climate",
                    "11 months",
                    "does not hold twelve months",
                    "Write all twelve from January on, or none");
        }

        @Test
        void several_faults_are_told_together_in_the_order_of_the_file() {
            List<Fault> faults = sound().with("/stages/0/crew", "0")
                    .with("/name", "\"\"")
                    .with("/materials/0/mass", "\"heavy\"")
                    .faults();
            assertThat(faults)
                    .extracting(Fault::pointer)
                    .containsExactly("/name", "/stages/0/crew", "/materials/0/mass");
        }
    }

    @Nested
    class Files {
        @ParameterizedTest
        @ValueSource(
                strings = {"", " ", "\n", "\uFEFF", "\uFEFF[]", "[]", "\"firmset-homestead\"", "12", "true", "null"})
        void that_hold_no_object(String text) {
            onlyFault(
                    faults(text),
                    "",
                    "",
                    "is not a JSON object",
                    "Start it with { \"format\": \"firmset-homestead\", ...");
        }

        @Test
        void of_another_format() {
            onlyFault(
                    sound().with("/format", "\"recipe\"").faults(),
                    "/format",
                    "\"recipe\"",
                    "does not say that this is a homestead file",
                    "Write \"firmset-homestead\" if it is one");
            assertThat(faults("{}")).extracting(Fault::pointer).containsExactly("/format");
        }

        @ParameterizedTest
        @ValueSource(strings = {"2", "0", "1.0", "\"1\"", "99999999999999999999"})
        void of_another_version(String version) {
            assertThat(sound().with("/version", version).faults())
                    .singleElement()
                    .satisfies(fault -> {
                        assertThat(fault.pointer()).isEqualTo("/version");
                        assertThat(fault.value()).isEqualTo(version);
                        assertThat(fault.remedy()).startsWith("It reads version 1;");
                    });
        }

        @Test
        void that_end_too_soon_wherever_they_are_cut() {
            String text = HomesteadFile.write(((Reading.Accepted) sound().read()).homestead());
            for (int end = 1; end < text.strip().length(); end += 7) {
                assertThat(faults(text.substring(0, end)))
                        .as("cut behind %d characters", end)
                        .singleElement()
                        .satisfies(fault -> {
                            assertThat(fault.pointer()).isEmpty();
                            assertThat(fault.problem()).startsWith("is not readable as JSON at line ");
                            assertThat(fault.remedy()).isEqualTo("Mend it there, or export the homestead again");
                        });
            }
        }

        @ParameterizedTest(name = "{0}")
        @CsvSource(delimiter = MARK, textBlock = """
            {"format": "firmset-homestead", "format": "firmset-homestead"} | Duplicate
            {"format": "firmset-homestead", "version": 1} {}               | Trailing token
            {"format": "firmset-homestead", }                              | Unexpected character
            {format: "firmset-homestead"}                                  | Unexpected character
            {"version": NaN}                                               | is not readable
            {"version": 0000001}                                           | is not readable
            """)
        void that_are_no_strict_json(String text, String said) {
            assertThat(faults(text)).singleElement().satisfies(fault -> {
                assertThat(fault.problem())
                        .startsWith("is not readable as JSON at line 1, column ")
                        .contains(said);
                assertThat(fault.remedy()).isEqualTo("Mend it there, or export the homestead again");
            });
        }

        @Test
        void with_a_number_whose_exponent_has_no_end() {
            onlyFault(
                    faults("{\"version\": 1e99999999999}"),
                    "",
                    "",
                    "is not readable as JSON: it holds a number out of all proportion",
                    "Mend it there, or export the homestead again");
        }

        @Test
        void that_start_with_a_byte_order_mark_are_read() {
            assertThat(Document.read("\uFEFF" + sound().text())).isInstanceOf(Reading.Accepted.class);
        }

        @Test
        void with_a_raw_control_character() {
            assertThat(faults("{\"format\": \"firm\u0000set\"}"))
                    .singleElement()
                    .extracting(Fault::problem)
                    .asString()
                    .startsWith("is not readable as JSON at line 1, column ");
        }

        @Test
        void that_are_no_utf_8() {
            byte[] bytes = sound().text().getBytes(StandardCharsets.UTF_8);
            bytes[bytes.length / 2] = (byte) 0xff;
            assertThat(faults(bytes)).singleElement().extracting(Fault::pointer).isEqualTo("");
        }

        @Test
        void of_ten_million_brackets() throws IOException {
            byte[] brackets = "[".repeat(10_000_000).getBytes(StandardCharsets.UTF_8);
            assertThat(faults(brackets))
                    .singleElement()
                    .satisfies(fault -> assertThat(fault.problem()).isEqualTo("is larger than 8,000,000 bytes"));
            assertThat(HomesteadFile.read(new ByteArrayInputStream(brackets)))
                    .isEqualTo(new Reading.Refused(faults(brackets)));
        }

        @Test
        void that_are_deep_though_not_large() {
            String deep = "{\"format\": " + "[".repeat(1_000_000) + "]".repeat(1_000_000) + "}";
            assertThat(faults(deep))
                    .singleElement()
                    .extracting(Fault::problem)
                    .asString()
                    .startsWith("is not readable as JSON: Document nesting depth");
        }

        @Test
        void with_endless_words_and_numbers() {
            assertThat(faults("{\"version\": " + "9".repeat(1_000_000) + "}")).hasSize(1);
            assertThat(faults("{\"" + "a".repeat(1_000_000) + "\": 1}")).hasSize(1);
            assertThat(faults("{\"format\": \"" + "a".repeat(1_000_000) + "\"}"))
                    .singleElement()
                    .satisfies(fault -> assertThat(fault.line()).hasSizeLessThan(400));
        }

        @Test
        void with_countless_faults_are_told_fifty() {
            String stages = IntStream.range(0, 5000).mapToObj(i -> "{}").collect(Collectors.joining(",", "[", "]"));
            assertThat(sound().with("/stages", stages).faults()).hasSize(50);
        }

        @Test
        void with_countless_names_that_are_not_there_are_told_fifty() {
            String waits =
                    IntStream.range(0, 30_000).mapToObj("""
                            {"key": "w%1$d", "name": "w", "kind": "dry", "from": "x%1$d", "to": "y%1$d",
                             "leastDays": 0}\
                            """::formatted).collect(Collectors.joining(",", "[", "]"));
            assertThat(sound().with("/waits", waits).faults()).hasSize(50);
        }

        @Test
        void with_a_very_long_chain_of_waits_are_read_without_running_out_of_stack() {
            String stages =
                    IntStream.range(0, 20_000).mapToObj("""
                            {"key": "s%d", "name": "s", "subproject": "shop", "labour": "1 h", "crew": 1,
                             "layout": "splittable"}\
                            """::formatted).collect(Collectors.joining(",", "[", "]"));
            String waits = IntStream.range(0, 20_000)
                    .mapToObj(i -> """
                            {"key": "w%d", "name": "w", "kind": "dry", "from": "s%d", "to": "s%d",
                             "leastDays": 0}\
                            """.formatted(i, i, (i + 1) % 20_000))
                    .collect(Collectors.joining(",", "[", "]"));
            assertThat(sound().with("/pins", "[]")
                            .with("/stages", stages)
                            .with("/waits", waits)
                            .faults())
                    .singleElement()
                    .satisfies(fault -> {
                        assertThat(fault.pointer()).isEqualTo("/waits");
                        assertThat(fault.line()).hasSizeLessThan(5_000);
                    });
        }
    }
}
