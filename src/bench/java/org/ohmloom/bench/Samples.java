package org.ohmloom.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.BusBar;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Setting;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

/** What is measured: the demonstration harness, and larger ones made up. */
final class Samples {

    private static final PointId NEGATIVE = new PointId("P0");

    private Samples() {}

    /** The demonstration harness. */
    static Harness pickup() {
        try {
            return HarnessFiles.read(Path.of("examples/rescue-pickup.harness.json"));
        } catch (HarnessFileException failed) {
            throw new IllegalStateException(failed);
        }
    }

    /** 5,000 wires between 1,000 bus bars along a trunk of 1,000 bundle segments of 0.1 m. */
    static Harness fiveThousandWires() {
        HarnessSketch sketch = new HarnessSketch();
        for (int k = 0; k < 1000; k++) {
            sketch.segment("T" + k, "B" + k, "B" + (k + 1), 0.1);
            sketch.component("Q" + k, new BusBar(List.of("a", "b"), 0)).at("Q" + k, "B" + k);
        }
        for (int k = 0; k < 5000; k++) {
            sketch.wire("W" + k, "Q" + k % 1000 + ".a", "Q" + (k * 7 + 13) % 1000 + ".b", 0.1);
        }
        return sketch.harness();
    }

    /** A battery, two splices and 499 loads of 0.1 A between them, all on: 1,000 wires of 1.5 mm2 and 3 m. */
    static Harness starOfThousandWires() {
        HarnessSketch sketch = new HarnessSketch()
                .battery("BAT1", 12.6, 0.005)
                .splice("S1", 0.0005)
                .splice("S2", 0.0005);
        OperatingState state = HarnessSketch.state();
        sketch.wire("W1", "BAT1.+", "S1", 0.001).wire("W2", "S2", "BAT1.-", 0.001);
        for (int k = 3; k < 1000; k += 2) {
            String load = "L" + k;
            sketch.load(load, 0.1, 12);
            sketch.with(branch("W" + k, "S1", load, "+", SignalClass.FEED));
            sketch.with(branch("W" + (k + 1), "S2", load, "-", SignalClass.RETURN));
            state = state.with(new ComponentId(load), Setting.ON);
        }
        DesignRules rules = new DesignRules(
                "road-vehicle", 12, 0.03, GaugeSystem.METRIC, "ISO 6722-1 class B", Optional.empty(), 30);
        return sketch.harness().withRules(rules).with(state);
    }

    private static Wire branch(String id, String splice, String load, String terminal, SignalClass signalClass) {
        return Wire.of(
                        id,
                        new WireEnd.AtSplice(new SpliceId(splice)),
                        new WireEnd.AtTerminal(new ComponentId(load), terminal),
                        signalClass)
                .withGauge(Optional.of(Gauge.metric(1.5)))
                .withLengthMetres(OptionalDouble.of(3));
    }

    /** 24 V on 5,000 links of 1 mohm in a row and 5 ohm at their end. */
    static Network chainOfFiveThousand() {
        Draft draft = new Draft(Law.VoltageSource.battery(24, 0));
        for (int k = 0; k < 5000; k++) {
            draft.branch("W" + k, BranchKind.WIRE, "C" + k, "C" + (k + 1), 0.001);
        }
        draft.branch("L", BranchKind.LOAD, "C5000", NEGATIVE.value(), 5);
        return draft.network();
    }

    /**
     * Return wires in one block.
     *
     * @param chain  wires one behind the other
     * @param apart  links between the starts of two wires across
     * @param span   links each wire across spans, more than {@code apart}, so that each overlaps the next
     * @param across wires across the chain, and so loops
     */
    static Network returnsWithLoops(int chain, int apart, int span, int across) {
        Draft draft = new Draft(new Law.Open());
        for (int k = 0; k < chain; k++) {
            draft.branch("W" + k, BranchKind.WIRE, "P" + k, "P" + (k + 1), 0.1);
        }
        for (int k = 0; k < across; k++) {
            draft.branch("X" + k, BranchKind.WIRE, "P" + apart * k, "P" + (apart * k + span), 0.1);
        }
        return draft.network();
    }

    /** A network branch by branch; its source leads from the datum to the first point. */
    private static final class Draft {
        private final SortedMap<BranchId, Branch> branches = new TreeMap<>();
        private final SortedSet<PointId> points = new TreeSet<>();

        Draft(Law source) {
            add("BAT1", BranchKind.SOURCE, NEGATIVE.value(), "C0", source);
        }

        void branch(String id, BranchKind kind, String from, String to, double ohms) {
            add(id, kind, from, to, new Law.Resistance(ohms));
        }

        private void add(String id, BranchKind kind, String from, String to, Law law) {
            PointId start = new PointId(from);
            PointId end = new PointId(to);
            points.addAll(List.of(start, end));
            branches.put(new BranchId(id), new Branch(new BranchId(id), kind, start, end, Optional.empty(), law));
        }

        Network network() {
            return new Network(new StateId("running"), points, branches, Optional.of(NEGATIVE));
        }
    }
}
