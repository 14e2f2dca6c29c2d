package org.ohmloom.pack.bench;

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
import org.ohmloom.analysis.Analysis;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.heat.WireRating;
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

    private final Analysis analysis;
    private final Harness harness;
    private final ConductorResistance resistance;
    private final Map<String, List<Wire>> wiresAt = new TreeMap<>(NaturalOrder.INSTANCE);

    private BenchNets(Analysis analysis) {
        this.analysis = analysis;
        this.harness = analysis.harness();
        this.resistance = new ConductorResistance(
                analysis.evidence().tables(), analysis.evidence().basis());
    }

    /** All nets, numbered in the order of their first ends. */
    public static List<BenchNet> of(Analysis analysis) {
        return new BenchNets(analysis).nets();
    }

    private List<BenchNet> nets() {
        for (Wire wire : harness.wires().all()) {
            if (!wire.existing()) {
                wiresAt.computeIfAbsent(place(wire, wire.from()), key -> new ArrayList<>())
                        .add(wire);
                if (!place(wire, wire.from()).equals(place(wire, wire.to()))) {
                    wiresAt.computeIfAbsent(place(wire, wire.to()), key -> new ArrayList<>())
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
                    if (seen.add(place(wire, end))) {
                        open.add(place(wire, end));
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
                    if (place(wire, end).equals(place) && !(end instanceof WireEnd.AtSplice)) {
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
        wires.forEach(wire -> wire.ends().forEach(end -> numbers.putIfAbsent(place(wire, end), numbers.size())));
        NetOhms bare = new NetOhms(numbers.size());
        NetOhms joined = new NetOhms(numbers.size());
        boolean known = true;
        for (Wire wire : wires) {
            OptionalDouble ohms = ohms(wire);
            known &= ohms.isPresent();
            int from = numbers.get(place(wire, wire.from()));
            int to = numbers.get(place(wire, wire.to()));
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

    /** Listed resistance of a wire at 20 C, or its measured one, ohm; empty when its length is unknown. */
    private OptionalDouble ohms(Wire wire) {
        OptionalDouble length = analysis.routes().lengthMetres(wire);
        if (length.isEmpty() && wire.measuredOhms().isEmpty()) {
            return OptionalDouble.empty();
        }
        Gauge gauge =
                analysis.evidence().rating(wire.id()).map(WireRating::gauge).orElseThrow();
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

    /** Where an end is on the bench: what shares a place is joined there. */
    private static String place(Wire wire, WireEnd end) {
        if (end instanceof WireEnd.AtCavity || end instanceof WireEnd.AtSplice) {
            return end.text();
        }
        String own =
                end instanceof WireEnd.Loose ? "loose end of " + wire.id() : end.text() + ", terminal of " + wire.id();
        return wire.from().equals(wire.to()) ? own + (end == wire.from() ? " (from)" : " (to)") : own;
    }
}
