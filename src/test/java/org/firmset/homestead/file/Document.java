package org.firmset.homestead.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A small homestead file for tests, sound until something in it is changed. */
final class Document {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();
    private static final String SOUND = """
            {
              "format": "firmset-homestead", "version": 1,
              "name": "North Fork", "units": "us", "currency": "USD",
              "place": {"latitude": 39.5, "longitude": -105.25, "timeZone": "America/Denver"},
              "travel": {"distance": "40 mi", "lostArriving": "1 h", "lostLeaving": "0.5 h",
                "costPerTrip": "60.00 USD", "costPerDay": "15.00 USD", "vehicle": "pickup", "trailer": "flatbed",
                "mostExtraRuns": 1, "extraRunTime": "2 h", "extraRunCost": "25.00 USD"},
              "openDates": {
                "rules": [{"key": "weekends", "weekdays": ["saturday", "sunday"], "from": "2027-05-01",
                  "to": "2027-09-30", "siteHours": "7 h", "people": ["ann", "bo"]}],
                "added": [{"date": "2027-07-05", "siteHours": "7 h", "people": ["ann"]}],
                "removed": ["2027-06-05"]},
              "people": [{"key": "ann", "name": "Ann", "mass": "160 lb", "workShare": 100},
                {"key": "bo", "name": "Bo", "mass": "180 lb", "workShare": 80}],
              "subprojects": [{"key": "shop", "name": "Shop", "budget": "9000.00 USD", "priority": 3}],
              "stages": [
                {"key": "dig", "name": "Dig footings", "subproject": "shop", "labour": "12 h", "crew": 1,
                  "layout": "splittable", "leastBlock": "1 h", "mostPerDay": "8 h", "tools": ["mixer"],
                  "progress": {"startedOn": "2027-04-10", "labourLeft": "4 h"}},
                {"key": "pour", "name": "Pour slab", "subproject": "shop", "labour": "6 h", "crew": 2,
                  "layout": "in-one-go", "energyPerHour": "300 Wh",
                  "season": {"from": "--04-15", "to": "--10-15"},
                  "notBefore": "2027-05-01", "notAfter": "2027-09-01",
                  "conditions": {"coldestNight": "4 degC", "dryDay": true},
                  "needs": [{"material": "cement", "packs": 20}], "hazards": ["wet-cement"]},
                {"key": "frame", "name": "Raise frame", "subproject": "shop", "labour": "20 h", "crew": 2,
                  "layout": "unbroken-days"}],
              "waits": [
                {"key": "dug", "name": "Footings dug", "kind": "follows", "from": "dig", "to": "pour", "leastDays": 0},
                {"key": "cured", "name": "Slab cures", "kind": "cure", "from": "pour", "to": "frame", "leastDays": 7,
                  "mostDays": 90}],
              "materials": [{"key": "cement", "name": "Cement", "pack": "bag", "mass": "80 lb", "volume": "0.6 ft3",
                "longest": "20 in", "dry": true, "shelfLifeDays": 90}],
              "suppliers": [{"key": "yard", "name": "Yard", "leadDays": 0,
                "prices": [{"material": "cement", "amount": "7.50 USD", "on": "2027-03-01"}],
                "delivery": {"fee": "80.00 USD", "largestMass": "4 t", "leadDays": 3, "weekdays": ["saturday"]}}],
              "tools": [{"key": "mixer", "name": "Mixer", "count": 1, "draw": "550 W"}],
              "vehicles": [{"key": "pickup", "name": "Pickup", "grossRating": "7000 lb", "emptyMass": "5100 lb",
                "standingKit": "100 lb", "bayVolume": "50 ft3", "longestPiece": "8 ft", "towRating": "5000 lb",
                "axles": {"wheelbase": "145 in", "frontRating": "3750 lb", "rearRating": "4100 lb",
                  "frontEmpty": "3000 lb", "bayFront": "92 in", "bayLength": "78 in", "seats": "65 in",
                  "kit": "100 in", "hitch": "193 in"}}],
              "trailers": [{"key": "flatbed", "name": "Flatbed", "grossRating": "3000 lb", "emptyMass": "700 lb",
                "tonguePercent": 12, "deckVolume": "100 ft3", "longestPiece": "16 ft",
                "deck": {"axle": "110 in", "front": "36 in", "length": "120 in", "axleRating": "3000 lb"}}],
              "power": {"capacity": "2.4 kWh", "floorPercent": 20, "panels": "400 W", "yieldPercent": 75,
                "generator": {"power": "2 kW", "hoursPerDay": "4 h", "costPerKilowattHour": "0.60 USD"}},
              "spendingLimit": {"aMonth": "900.00 USD", "firm": true},
              "storage": {"dryVolume": "2 m3"},
              "stock": [{"material": "cement", "packs": 4, "since": "2027-04-01"}],
              "pins": [{"stage": "pour", "dates": ["2027-06-12", "2027-06-13"], "why": "Helpers come"}]
            }
            """;

    private final ObjectNode root = (ObjectNode) MAPPER.readTree(SOUND);

    private Document() {}

    static Document sound() {
        return new Document();
    }

    /** @param json the new value */
    Document with(String pointer, String json) {
        JsonNode value = MAPPER.readTree(json);
        JsonPointer at = JsonPointer.compile(pointer);
        JsonNode owner = root.at(at.head());
        if (owner instanceof ArrayNode array) {
            if (at.last().getMatchingIndex() < array.size()) {
                array.set(at.last().getMatchingIndex(), value);
            } else {
                array.add(value);
            }
        } else {
            assertThat(owner).as("owner of %s", pointer).isInstanceOf(ObjectNode.class);
            ((ObjectNode) owner).set(at.last().getMatchingProperty(), value);
        }
        return this;
    }

    Document without(String pointer) {
        JsonPointer at = JsonPointer.compile(pointer);
        ((ObjectNode) root.at(at.head())).remove(at.last().getMatchingProperty());
        return this;
    }

    String text() {
        return MAPPER.writeValueAsString(root);
    }

    Reading read() {
        return read(text());
    }

    /** Everything that is wrong with the text; empty when it is accepted. */
    static List<Fault> faults(String text) {
        return faults(text.getBytes(StandardCharsets.UTF_8));
    }

    static List<Fault> faults(byte[] bytes) {
        return HomesteadFile.read(bytes) instanceof Reading.Refused refused ? refused.faults() : List.of();
    }

    static Reading read(String text) {
        return HomesteadFile.read(text.getBytes(StandardCharsets.UTF_8));
    }

    List<Fault> faults() {
        return faults(text());
    }
}
