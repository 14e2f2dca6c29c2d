package org.ohmloom.heat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.graph.Route;
import org.ohmloom.graph.Routes;
import org.ohmloom.heat.balance.Cover;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Covering;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.WireTables;
import org.ohmloom.words.Constants;
import org.ohmloom.words.Text;

/**
 * A place where wires heat each other: one cross-section of the harness.
 *
 * @param wires          the wires in it, in id order, one at least
 * @param cover          what lies over them
 * @param ambientCelsius air there, deg C
 * @param words          what it is, for example "in segment G3, tape"
 */
record HeatPlace(List<WireId> wires, Cover cover, double ambientCelsius, Text words) {

    HeatPlace {
        wires = List.copyOf(wires);
    }

    /** What tells places apart: the same wires under the same covering in the same air heat alike. */
    private record Likeness(List<WireId> wires, Cover cover, double ambientCelsius) {}

    /** Every place of a harness that differs from the others. */
    static List<HeatPlace> of(Harness harness, WireTables tables, Routes routes) {
        Map<Likeness, HeatPlace> places = new LinkedHashMap<>();
        SortedMap<SegmentId, List<WireId>> bySegment = new TreeMap<>();
        Map<WireId, Double> hottest = new HashMap<>();
        for (Wire wire : harness.wires().all()) {
            routes.of(wire.id()).map(Route::segments).orElse(List.of()).stream()
                    .distinct()
                    .forEach(segment -> bySegment
                            .computeIfAbsent(segment, id -> new ArrayList<>())
                            .add(wire.id()));
        }
        bySegment.forEach((id, wires) -> {
            BundleSegment segment = harness.segments().get(id);
            double ambient = segment.zone()
                    .map(zone -> harness.zones().get(zone).ambientCelsius())
                    .orElse(harness.rules().ambientCelsius());
            Text place = segment.covering()
                    .map(covering -> HeatTexts.text("place.segment-covered", id, Constants.text(covering.kind())))
                    .orElseGet(() -> HeatTexts.text("place.segment", id));
            put(places, new HeatPlace(wires, cover(tables, segment.covering()), ambient, place));
            wires.forEach(wire -> hottest.merge(wire, ambient, Math::max));
        });
        cables(harness, routes, places);
        for (Wire wire : harness.wires().all()) {
            double ambient = WirePlaces.of(harness, routes, wire)
                    .hottestCelsius(harness.rules().ambientCelsius());
            if (ambient > hottest.getOrDefault(wire.id(), Double.NEGATIVE_INFINITY)) {
                put(places, new HeatPlace(List.of(wire.id()), Cover.NONE, ambient, HeatTexts.text("place.alone")));
            }
        }
        return List.copyOf(places.values());
    }

    /** Cables whose cores have no way through the harness: their cores heat each other. */
    private static void cables(Harness harness, Routes routes, Map<Likeness, HeatPlace> places) {
        harness.cables().all().forEach(cable -> {
            List<Wire> cores = harness.wires().all().stream()
                    .filter(wire -> wire.cable().filter(cable.id()::equals).isPresent())
                    .filter(wire -> routes.of(wire.id()).isEmpty())
                    .toList();
            cores.stream()
                    .mapToDouble(wire -> WirePlaces.of(harness, routes, wire)
                            .hottestCelsius(harness.rules().ambientCelsius()))
                    .max()
                    .ifPresent(ambient -> put(
                            places,
                            new HeatPlace(
                                    List.copyOf(new TreeSet<>(
                                            cores.stream().map(Wire::id).toList())),
                                    Cover.NONE,
                                    ambient,
                                    HeatTexts.text("place.cable", cable.id()))));
        });
    }

    private static void put(Map<Likeness, HeatPlace> places, HeatPlace place) {
        places.putIfAbsent(new Likeness(place.wires(), place.cover(), place.ambientCelsius()), place);
    }

    private static String kind(Covering covering) {
        return covering.kind().name();
    }

    private static Cover cover(WireTables tables, Optional<Covering> covering) {
        return covering.flatMap(each -> tables.findCovering(kind(each)))
                .map(type -> new Cover(
                        type.gapMm(),
                        type.gapWattsPerMetrePerKelvin(),
                        type.wallMm(),
                        type.wallWattsPerMetrePerKelvin(),
                        type.emissivityFraction()))
                .orElse(Cover.NONE);
    }
}
