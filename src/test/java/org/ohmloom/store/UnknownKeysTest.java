package org.ohmloom.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;

/** Keys this version does not know are kept and written behind the known keys of their object. */
@BesideOthers
class UnknownKeysTest {

    private static Harness read(String text) throws HarnessFileException {
        return HarnessText.read(text, Refusals.FILE);
    }

    @Test
    void atEveryDepthTheyComeBackByteForByte() throws HarnessFileException {
        String text = SmallExample.text()
                .replace(
                        "\"yMm\": 0}\n  }\n}",
                        "\"yMm\": 0, \"zMm\": 1.50}\n  },\n  \"later\": {\"a\": [1, null, 0.10, \"µ\"]}\n}")
                .replace("{\"splice\": \"S1\"}", "{\"splice\": \"S1\", \"x\": 1}")
                .replace("\"contact\": \"T28\"}]", "\"contact\": \"T28\", \"wax\": true}]")
                .replace("\"limitAmps\": 24}", "\"limitAmps\": 24, \"why\": \"test\"}")
                .replace("{\"starting\": true}", "{\"starting\": true, \"seconds\": 2}")
                .replace("{\"M1\": true, \"SW1\": true}", "{\"M1\": {\"seconds\": 2}, \"SW1\": true}");
        Harness harness = read(text);
        assertEquals(
                Map.of("later", "{\"a\": [1, null, 0.10, \"µ\"]}"),
                harness.unknownKeys().byPlace().get(""));
        assertEquals(Map.of("zMm", "1.50"), harness.unknownKeys().byPlace().get("layout/B2"));
        assertEquals(Map.of("wax", "true"), harness.unknownKeys().byPlace().get("connectors/X1/cavities/2"));
        assertEquals(Map.of("why", "\"test\""), harness.unknownKeys().byPlace().get("contacts/T28/limits/0"));
        String written = HarnessText.write(harness);
        assertEquals(HarnessText.write(read(written)), written);
        assertTrue(written.contains("\"wax\": true") && written.contains("\"seconds\": 2"), written);
        assertTrue(
                written.endsWith(
                        "\"yMm\": 0, \"zMm\": 1.50}\n  },\n  \"later\": {\n    \"a\": [1, null, 0.10, \"µ\"]\n  }\n}\n"),
                written);
    }

    @Test
    void theyFollowTheirElementWhenOthersComeBeforeIt() throws HarnessFileException {
        Harness harness = read(SmallExample.with("\"circuit\": \"Fan\"", "\"circuit\": \"Fan\", \"twist\": 3"));
        Harness fewer = harness.without(new WireId("W1"));
        String written = HarnessText.write(fewer);
        assertTrue(written.contains("\"circuit\": \"Fan\",\n      \"twist\": 3\n"), written);
    }

    @Test
    void thoseOfADeletedElementAreNotWrittenAndComeBackWithIt() throws HarnessFileException {
        String text = SmallExample.with("\"circuit\": \"Fan\"", "\"circuit\": \"Fan\",\n      \"twist\": 3");
        Harness harness = read(text);
        Harness without = harness.without(new WireId("W3"));
        assertTrue(!HarnessText.write(without).contains("twist"));
        Harness again = without.withAll(List.of(harness.wires().get(new WireId("W3"))));
        assertEquals(text, HarnessText.write(again));
    }

    @Test
    void aSlashInANameDoesNotMixPlacesUp() throws HarnessFileException {
        String text = SmallExample.text()
                .replace(
                        "{\"name\": \"2\", \"terminal\": \"-\", \"contact\": \"T28\"}",
                        "{\"name\": \"2/~0\", \"kept\": 1}")
                .replace("\"cavity\": \"2\"", "\"cavity\": \"2/~0\"");
        Harness harness = read(text);
        assertEquals(Map.of("kept", "1"), harness.unknownKeys().byPlace().get("connectors/X1/cavities/2~1~00"));
        assertTrue(HarnessText.write(harness).contains("{\"name\": \"2/~0\", \"kept\": 1}"));
    }
}
