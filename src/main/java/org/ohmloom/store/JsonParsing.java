package org.ohmloom.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import org.ohmloom.words.Refusals;

/** Reads JSON text strictly: one value, no key twice, no comments, bounded depth and length. */
final class JsonParsing {

    /** How deep objects and arrays may lie in one another; the format itself needs seven levels. */
    static final int DEEPEST = 64;

    /** Most characters of one text. */
    static final int LONGEST_TEXT = 100_000;

    /** Most values, keys and brackets of one file; 100,000 wires have 3 million, and this many take half a gigabyte. */
    static final int MOST_PARTS = 5_000_000;

    private static final ObjectReader READER = JsonMapper.builder(JsonFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(DEEPEST)
                            .maxStringLength(LONGEST_TEXT)
                            .maxNameLength(1_000)
                            .maxNumberLength(200)
                            .maxTokenCount(MOST_PARTS)
                            .build())
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build()
            .reader();

    private JsonParsing() {}

    /**
     * The value of a text.
     *
     * @throws SyntaxException when it is not JSON
     */
    static JsonNode parse(String text) throws SyntaxException {
        try (JsonParser parser = READER.createParser(text)) {
            try {
                return READER.readValue(parser, JsonNode.class);
            } catch (JsonProcessingException broken) {
                JsonLocation told = broken.getLocation();
                JsonLocation at = told == null ? parser.currentLocation() : told;
                throw new SyntaxException(
                        at.getLineNr(), at.getColumnNr(), SyntaxProblem.of(broken.getOriginalMessage()));
            } catch (NumberFormatException tooLong) {
                JsonLocation at = parser.currentLocation();
                throw new SyntaxException(
                        at.getLineNr(), at.getColumnNr(), Refusals.text("the exponent of a number is too long"));
            }
        } catch (IOException impossible) {
            throw new IllegalStateException("a text in memory refused to be read", impossible);
        }
    }

    /**
     * The value of a text kept from a file.
     *
     * @throws IllegalArgumentException when it is not JSON, which only a text that never was in a file can be
     */
    static JsonNode kept(String json) {
        try {
            return parse(json);
        } catch (SyntaxException broken) {
            throw new IllegalArgumentException("the value of an unknown key is not JSON: " + json, broken);
        }
    }
}
