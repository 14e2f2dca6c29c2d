package org.ohmloom.heat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.ohmloom.graph.Routes;
import org.ohmloom.heat.balance.BundleSection;
import org.ohmloom.heat.balance.Bundled;
import org.ohmloom.heat.balance.OneTried;
import org.ohmloom.heat.balance.SteadyState;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.Text;

/**
 * The physical estimate of every wire's temperature: each cross-section of the harness by the heat balance of its bundle,
 * with its covering, the air of its zone, the sizes and the currents of one operating state; a wire takes the hottest of
 * its places. Ends in hotter air than the harness count as the wire alone there. Safe for any number of threads.
 */
public final class BundleHeat {

    private final Harness harness;
    private final Ampacities ampacities;
    private final List<HeatPlace> places;
    private final Map<WireId, List<HeatPlace>> placesOf = new HashMap<>();

    /** The heat of the wires of a harness. */
    public BundleHeat(Harness harness, WireTables tables, Routes routes, Ampacities ampacities) {
        this.harness = harness;
        this.ampacities = ampacities;
        this.places = HeatPlace.of(harness, tables, routes);
        for (HeatPlace place : places) {
            place.wires().stream().distinct().forEach(wire -> placesOf.computeIfAbsent(wire, id -> new ArrayList<>())
                    .add(place));
        }
    }

    /** What its wires may carry, each worked out once. */
    public Ampacities ampacities() {
        return ampacities;
    }

    /**
     * Where all wires settle.
     *
     * @param gauge   size of each wire
     * @param rmsAmps RMS current of each wire, A, either sign
     * @param near    temperatures to begin at, deg C, from an earlier round; may be empty
     */
    public SortedMap<WireId, WireHeat> settle(
            Function<Wire, Gauge> gauge, ToDoubleFunction<Wire> rmsAmps, Map<WireId, Double> near) {
        return settle(gauge, rmsAmps, near, () -> {});
    }

    /**
     * Where all wires settle.
     *
     * @param gauge   size of each wire
     * @param rmsAmps RMS current of each wire, A, either sign
     * @param near    temperatures to begin at, deg C, from an earlier round; may be empty
     * @param poll    called before each cross-section; throws what ends the work
     */
    public SortedMap<WireId, WireHeat> settle(
            Function<Wire, Gauge> gauge, ToDoubleFunction<Wire> rmsAmps, Map<WireId, Double> near, Runnable poll) {
        Map<WireId, Bundled> bundled = new HashMap<>();
        for (Wire wire : harness.wires().all()) {
            bundled.put(
                    wire.id(),
                    new Bundled(
                            ampacities.shape(wire, gauge.apply(wire)).wire(), Math.abs(rmsAmps.applyAsDouble(wire))));
        }
        SortedMap<WireId, WireHeat> heat = new TreeMap<>();
        for (HeatPlace place : places) {
            poll.run();
            List<Bundled> wires = place.wires().stream().map(bundled::get).toList();
            List<SteadyState> states = settle(place, wires, near);
            Text where = wires.size() == 1
                    ? place.words()
                    : wires.size() == 2
                            ? HeatTexts.text("place.with-one", place.words())
                            : HeatTexts.text("place.with-others", place.words(), wires.size() - 1);
            for (int i = 0; i < states.size(); i++) {
                SteadyState state = states.get(i);
                WireHeat here = new WireHeat(
                        state.celsius(), state.surfaceCelsius(), place.ambientCelsius(), where, state.runaway());
                heat.merge(place.wires().get(i), here, WireHeat::hotter);
            }
        }
        return heat;
    }

    /**
     * The wires at sizes and currents that stay while one after the other is tried at others.
     *
     * @param gauge   size of each wire
     * @param rmsAmps RMS current of each wire, A, either sign
     */
    public Neighbours neighbours(Function<Wire, Gauge> gauge, ToDoubleFunction<Wire> rmsAmps) {
        return new Neighbours(gauge, rmsAmps);
    }

    /** Wires among which one is tried; each is looked up once. For one thread. */
    public final class Neighbours {
        private final Function<Wire, Gauge> gauge;
        private final ToDoubleFunction<Wire> rmsAmps;
        private final Map<HeatPlace, OneTried> known = new IdentityHashMap<>();

        private Neighbours(Function<Wire, Gauge> gauge, ToDoubleFunction<Wire> rmsAmps) {
            this.gauge = gauge;
            this.rmsAmps = rmsAmps;
        }

        private OneTried at(HeatPlace place) {
            return known.computeIfAbsent(
                    place,
                    each -> new OneTried(
                            each.wires().stream()
                                    .map(harness.wires()::get)
                                    .map(wire -> bundled(wire, gauge.apply(wire), rmsAmps.applyAsDouble(wire)))
                                    .toList(),
                            each.cover(),
                            ampacities.air(each.ambientCelsius())));
        }

        /**
         * Where one wire settles with its neighbours: the hottest of its places; empty when it has none.
         *
         * @param wire  the wire
         * @param tried the size it is tried at
         * @param amps  the RMS current it is tried with, A
         */
        public Optional<WireHeat> settle(Wire wire, Gauge tried, double amps) {
            Optional<WireHeat> hottest = Optional.empty();
            Bundled own = bundled(wire, tried, amps);
            for (HeatPlace place : placesOf.getOrDefault(wire.id(), List.of())) {
                SteadyState state = at(place).settle(place.wires().indexOf(wire.id()), own);
                WireHeat here = new WireHeat(
                        state.celsius(),
                        state.surfaceCelsius(),
                        place.ambientCelsius(),
                        place.words(),
                        state.runaway());
                hottest = Optional.of(hottest.map(found -> found.hotter(here)).orElse(here));
            }
            return hottest;
        }
    }

    private Bundled bundled(Wire wire, Gauge gauge, double rmsAmps) {
        return new Bundled(ampacities.shape(wire, gauge).wire(), Math.abs(rmsAmps));
    }

    private List<SteadyState> settle(HeatPlace place, List<Bundled> wires, Map<WireId, Double> near) {
        double[] start = place.wires().stream()
                .mapToDouble(id -> Math.max(place.ambientCelsius(), near.getOrDefault(id, place.ambientCelsius())))
                .toArray();
        return new BundleSection(wires, place.cover(), ampacities.air(place.ambientCelsius())).settle(start);
    }
}
