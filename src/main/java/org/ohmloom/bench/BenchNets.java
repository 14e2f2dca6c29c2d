package org.ohmloom.bench;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.ProbePlace;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.Harness;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.units.Gauge;

/**
 * The nets of a harness on the bench. Only wires to be made count. Wires are joined by splices and by sharing a cavity;
 * on a stud, a screw or a ground point each wire's own terminal hangs free; connectors are not mated.
 */
public final class BenchNets {
    private static final double BENCH_CELSIUS = 20;

    private final BenchInput input;
    private final Harness harness;
    private final ConductorResistance resistance;
    private final Map<String, List<Wire>> wiresAt = new TreeMap<>(NaturalOrder.INSTANCE);

    private BenchNets(BenchInput input) {
        this.input = input;
        this.harness = input.harness();
        this.resistance = new ConductorResistance(input.tables(), input.basis());
    }

    /** All nets, numbered in the order of their first ends. */
    public static List<BenchNet> of(BenchInput input) {
        return new BenchNets(input).nets();
    }

    private List<BenchNet> nets() {
        for (Wire wire : harness.wires().all()) {
            if (!wire.existing()) {
                wiresAt.computeIfAbsent(ProbePlace.of(wire, wire.from()), key -> new ArrayList<>())
                        .add(wire);
                if (!ProbePlace.of(wire, wire.from()).equals(ProbePlace.of(wire, wire.to()))) {
                    wiresAt.computeIfAbsent(ProbePlace.of(wire, wire.to()), key -> new ArrayList<>())
                            .add(wire);
                }
            }
        }
        List<BenchNet> nets = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String place : wiresAt.keySet()) {
            if (!seen.contains(place)) {
                nets.add(net("N" + (nets.size() + 1), reached(place, seen)));
            }
        }
        return nets;
    }

    /** Every place that can be reached over wires. */
    private List<String> reached(String start, Set<String> seen) {
        List<String> places = new ArrayList<>();
        Deque<String> open = new ArrayDeque<>(List.of(start));
        seen.add(start);
        while (!open.isEmpty()) {
            String place = open.remove();
            places.add(place);
            for (Wire wire : wiresAt.get(place)) {
                for (WireEnd end : wire.ends()) {
                    if (seen.add(ProbePlace.of(wire, end))) {
                        open.add(ProbePlace.of(wire, end));
                    }
                }
            }
        }
        return places;
    }

    private BenchNet net(String id, List<String> places) {
        SortedMap<String, Wire> wires = new TreeMap<>(NaturalOrder.INSTANCE);
        SortedMap<BenchEnd, String> ends = new TreeMap<>();
        for (String place : places) {
            for (Wire wire : wiresAt.get(place)) {
                wires.put(wire.id().value(), wire);
                for (WireEnd end : wire.ends()) {
                    if (ProbePlace.of(wire, end).equals(place) && !(end instanceof WireEnd.AtSplice)) {
                        ends.put(new BenchEnd(place, harness.contact(end)), place);
                    }
                }
            }
        }
        List<Wire> all = List.copyOf(wires.values());
        List<BenchEnd> order = List.copyOf(ends.keySet());
        return new BenchNet(id, all, order, paths(all, order, ends));
    }

    private SortedMap<BenchEnd, BenchNet.Path> paths(
            List<Wire> wires, List<BenchEnd> order, SortedMap<BenchEnd, String> places) {
        if (order.size() < 2) {
            return new TreeMap<>();
        }
        Map<String, Integer> numbers = new LinkedHashMap<>();
        numbers.put(places.get(order.get(0)), 0);
        wires.forEach(
                wire -> wire.ends().forEach(end -> numbers.putIfAbsent(ProbePlace.of(wire, end), numbers.size())));
        NetOhms bare = new NetOhms(numbers.size());
        NetOhms joined = new NetOhms(numbers.size());
        boolean known = true;
        for (Wire wire : wires) {
            OptionalDouble ohms = ohms(wire);
            known &= ohms.isPresent();
            int from = numbers.get(ProbePlace.of(wire, wire.from()));
            int to = numbers.get(ProbePlace.of(wire, wire.to()));
            bare.add(from, to, ohms.orElse(0));
            joined.add(from, to, ohms.orElse(0) + joint(wire.from()) + joint(wire.to()));
        }
        double[] wireOhms = bare.fromFirst();
        double[] allOhms = joined.fromFirst();
        SortedMap<BenchEnd, BenchNet.Path> paths = new TreeMap<>();
        for (BenchEnd end : order.subList(1, order.size())) {
            int number = numbers.get(places.get(end));
            double joints = Math.max(0, allOhms[number] - wireOhms[number]) + ohms(order.get(0)) + ohms(end);
            OptionalDouble metal = known ? OptionalDouble.of(wireOhms[number]) : OptionalDouble.empty();
            paths.put(end, new BenchNet.Path(metal, joints));
        }
        return paths;
    }

    /** Listed resistance of a wire at 20 C, or the one entered with it, ohm; empty when its length is unknown. */
    private OptionalDouble ohms(Wire wire) {
        OptionalDouble length = input.routes().lengthMetres(wire);
        if (length.isEmpty() && wire.measuredOhms().isEmpty()) {
            return OptionalDouble.empty();
        }
        Gauge gauge = input.rating(wire).gauge();
        return OptionalDouble.of(resistance.ohms(wire, gauge, length, BENCH_CELSIUS));
    }

    private double joint(WireEnd end) {
        return end instanceof WireEnd.AtSplice at
                ? harness.splices().get(at.splice()).jointOhms()
                : 0;
    }

    private static double ohms(BenchEnd end) {
        return end.contact().map(ContactPart::contactOhms).orElse(0.0);
    }
}
