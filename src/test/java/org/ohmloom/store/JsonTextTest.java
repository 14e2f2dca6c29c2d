package org.ohmloom.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** The JSON writer for later floors. */
class JsonTextTest {

    @Test
    void keysKeepTheirOrderAndShortValuesStandOnOneLine() {
        String text = JsonText.object(json -> json.put("harness", "Fan")
                .put("count", 3)
                .put("amps", 12.0)
                .put("open", false)
                .put("ohms", OptionalDouble.empty())
                .put("basis", Optional.of("road-vehicle"))
                .putNull("island")
                .object("values", values -> values.put("volts", 0.1))
                .texts("subjects", List.of("W1", "W2"))
                .objects("wires", List.of("W1", "W2"), (id, wire) -> wire.put("id", id)));
        assertEquals(
                """
                {
                  "harness": "Fan",
                  "count": 3,
                  "amps": 12,
                  "open": false,
                  "ohms": null,
                  "basis": "road-vehicle",
                  "island": null,
                  "values": {"volts": 0.1},
                  "subjects": ["W1", "W2"],
                  "wires": [{"id": "W1"}, {"id": "W2"}]
                }
                """,
                text);
    }

    @Test
    void anArrayHoldsAnything() {
        String text = JsonText.array(json -> json.add("a")
                .add(1.5)
                .add(7)
                .add(true)
                .addNull()
                .array(inner -> inner.add(1))
                .object(inner -> {}));
        assertEquals("[\n  \"a\",\n  1.5,\n  7,\n  true,\n  null,\n  [1],\n  {}\n]\n", text);
    }

    @Test
    void whatIsNotFiniteIsNull() {
        String text = JsonText.object(json ->
                json.put("a", Double.NaN).put("b", Double.POSITIVE_INFINITY).put("c", -0.0));
        assertEquals("{\n  \"a\": null,\n  \"b\": null,\n  \"c\": 0\n}\n", text);
    }

    @Test
    void numbersHaveTheFewestDigitsThatReadBack() {
        assertEquals("12", digits(12.0));
        assertEquals("0.0035", digits(3.5e-3));
        assertEquals("0.1", digits(0.1));
        assertEquals("0.30000000000000004", digits(0.1 + 0.2));
        assertEquals("2E-12", digits(2e-12));
        assertEquals("1E+23", digits(1e23));
        assertEquals("4.9E-324", digits(Double.MIN_VALUE));
        assertEquals("100000000", digits(1e8));
    }

    @Property
    void everyFiniteNumberReadsBackAsItself(@ForAll double value) {
        assertEquals(value + 0.0, Double.parseDouble(digits(value)));
    }

    @Property
    void everyTextReadsBackAsItself(@ForAll String text) {
        String json = JsonText.object(object -> object.put("text", text));
        assertEquals(text, JsonParsing.kept(json).get("text").textValue());
    }

    @Test
    void aKeyIsPutOnce() {
        assertThrows(
                IllegalArgumentException.class,
                () -> JsonText.object(json -> json.put("a", 1).put("a", 2)));
    }

    private static String digits(double value) {
        return JsonNumbers.text(JsonNumbers.node(value));
    }
}
