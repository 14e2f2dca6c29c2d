package org.ohmloom.tables;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ohmloom.words.Refusals;

/** Gathers the rows of the fuse tables by type, then makes one series of each. */
final class FuseShelf {
    /** Stands for every type in the tables of resistances and temperatures. */
    private static final String ANY = "any";

    private final Map<String, List<FuseRating>> ratings = new LinkedHashMap<>();
    private final Map<String, List<FuseTimeLimit>> times = new LinkedHashMap<>();
    private final Map<String, List<FuseResistance>> resistances = new LinkedHashMap<>();
    private final Map<String, List<BreakingCapacity>> breaking = new LinkedHashMap<>();
    private final Map<String, List<AmbientShare>> ambient = new LinkedHashMap<>();
    private final Map<String, RowReader> firstUse = new LinkedHashMap<>();

    void addRatings(SheetReader sheet) {
        sheet.rows(row -> add(ratings, row, FuseRating.read(row)));
    }

    void addTimes(SheetReader sheet) {
        sheet.rows(row -> add(times, used(row), FuseTimeLimit.read(row)));
    }

    void addResistances(SheetReader sheet) {
        sheet.rows(row -> add(resistances, used(row), FuseResistance.read(row)));
    }

    void addBreaking(SheetReader sheet) {
        sheet.rows(row -> add(breaking, used(row), BreakingCapacity.read(row)));
    }

    void addAmbient(SheetReader sheet) {
        sheet.rows(row -> add(ambient, used(row), AmbientShare.read(row)));
    }

    /** The row, its type remembered as one that must have ratings. */
    private RowReader used(RowReader row) {
        if (!row.text("type").equals(ANY)) {
            firstUse.putIfAbsent(row.text("type"), row);
        }
        return row;
    }

    private static <T> boolean add(Map<String, List<T>> byType, RowReader row, T value) {
        return byType.computeIfAbsent(row.text("type"), type -> new ArrayList<>())
                .add(value);
    }

    /** The series by type; refuses times or other values of a type that has no ratings. */
    Map<String, FuseSeries> series() {
        firstUse.forEach((type, row) -> {
            if (!ratings.containsKey(type)) {
                throw row.unfit(
                        "type",
                        Refusals.text("'%s' has no ratings in any table; add its ratings, or correct it", type));
            }
        });
        Map<String, FuseSeries> series = new LinkedHashMap<>();
        ratings.forEach((type, values) -> {
            List<FuseResistance> typical = new ArrayList<>(resistances.getOrDefault(type, List.of()));
            typical.addAll(resistances.getOrDefault(ANY, List.of()));
            series.put(
                    type,
                    new FuseSeries(
                            type,
                            values,
                            times.getOrDefault(type, List.of()),
                            typical,
                            breaking.getOrDefault(type, List.of()),
                            ambient.getOrDefault(type, ambient.getOrDefault(ANY, List.of()))));
        });
        return series;
    }
}
