package org.ohmloom.store;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.UnknownKeys;

/** Gathers the keys this version does not know while a file is read, and hands them out while it is written. */
final class KeptKeys {
    private final SortedMap<String, Map<String, String>> byPlace = new TreeMap<>();

    /** None yet. */
    KeptKeys() {}

    /** Those of a harness about to be written. */
    KeptKeys(UnknownKeys known) {
        byPlace.putAll(known.byPlace());
    }

    /** Keeps a key of the object at a place, with its value as JSON text. */
    void keep(String place, String key, String json) {
        byPlace.computeIfAbsent(place, unused -> new LinkedHashMap<>()).put(key, json);
    }

    /** The unknown keys of the object at a place, in file order. */
    Map<String, String> at(String place) {
        return byPlace.getOrDefault(place, Collections.emptyMap());
    }

    UnknownKeys all() {
        return new UnknownKeys(byPlace);
    }
}
