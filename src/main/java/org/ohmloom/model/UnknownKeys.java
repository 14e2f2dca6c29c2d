package org.ohmloom.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Keys of a harness file that this version does not know, kept so that saving writes them back.
 *
 * @param byPlace for each place in the file (ids instead of positions, for example {@code wires/W3/from}) the unknown
 *                keys in file order with their JSON text
 */
public record UnknownKeys(SortedMap<String, Map<String, String>> byPlace) {

    /** No unknown keys. */
    public static final UnknownKeys NONE = new UnknownKeys(new TreeMap<>());

    public UnknownKeys {
        SortedMap<String, Map<String, String>> copy = new TreeMap<>();
        byPlace.forEach((place, keys) -> copy.put(place, Collections.unmodifiableMap(new LinkedHashMap<>(keys))));
        byPlace = Collections.unmodifiableSortedMap(copy);
    }
}
