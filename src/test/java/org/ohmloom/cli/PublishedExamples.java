package org.ohmloom.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.analysis.Analysis;

/** What {@code check --format json} publishes of each example, made once for all tests that only read it. */
final class PublishedExamples {

    private static final Map<String, JsonNode> BY_NAME = new ConcurrentHashMap<>();

    private PublishedExamples() {}

    /** The JSON of an example by its short name. */
    static JsonNode of(String name) {
        return BY_NAME.computeIfAbsent(name, PublishedExamples::anew);
    }

    private static JsonNode anew(String name) {
        Analysis analysis = AnalysedExamples.of(name);
        try {
            return new ObjectMapper().readTree(CheckJson.text(analysis, analysis.states(), Optional.empty()));
        } catch (JsonProcessingException broken) {
            throw new AssertionError(broken);
        }
    }
}
