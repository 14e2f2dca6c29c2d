package org.ohmloom.solve.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.FuseOhms;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.LoadGroup;
import org.ohmloom.model.LoadGroupId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.Relay;
import org.ohmloom.model.Setting;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Switch;
import org.ohmloom.solve.DcSolver;
import org.ohmloom.solve.Solution;

/**
 * A harness drawn at random: a battery, perhaps an alternator, a feed tree and a return tree of splices, loads between them
 * behind switches that two may share, one of them through a relay; load groups over the loads. Everything is invented.
 */
final class SketchedLoads {
    private final Random random;
    private final HarnessSketch sketch = new HarnessSketch();
    private final List<ComponentId> switches = new ArrayList<>();
    /** Switch of each load, by its place in {@link #switches}. */
    private final List<Integer> switchOf = new ArrayList<>();

    private final List<LoadGroup> groups = new ArrayList<>();
    private final boolean alternator;

    SketchedLoads(long seed, int loads, boolean constant, boolean alternator) {
        this.random = new Random(seed);
        this.alternator = alternator;
        sketch.battery("BT1", 12.6, 0.01);
        if (alternator) {
            sketch.component("GEN1", new Alternator(14.2, 0.02, 20 + random.nextInt(20)));
        }
        sketch.splice("F0", 0).splice("R0", 0);
        sketch.wire("WF0", "BT1.+", "F0", ohms()).wire("WR0", "R0", "BT1.-", ohms());
        if (alternator) {
            sketch.wire("WG1", "GEN1.+", "F0", ohms()).wire("WG2", "R0", "GEN1.-", ohms());
        }
        for (int node = 1; node < 4; node++) {
            sketch.splice("F" + node, 0).splice("R" + node, 0);
            sketch.wire("WF" + node, "F" + random.nextInt(node), "F" + node, ohms());
            sketch.wire("WR" + node, "R" + node, "R" + random.nextInt(node), ohms());
        }
        for (int load = 0; load < loads; load++) {
            load(load, constant);
        }
        for (int group = 0; group < 2; group++) {
            group(group, loads);
        }
    }

    private double ohms() {
        return 0.002 + 0.02 * random.nextDouble();
    }

    private void load(int number, boolean constant) {
        String id = "L" + number;
        String feed = "F" + random.nextInt(4);
        double amps = 1 + random.nextInt(12);
        sketch.component(id, Load.of(constant ? new Draw.ConstantCurrent(amps, 12) : draw(amps)));
        boolean shares = number > 0 && random.nextInt(4) == 0;
        if (shares) {
            int partner = switchOf.get(random.nextInt(number));
            switchOf.add(partner);
            sketch.wire("W" + id, "T" + partner, id + ".+", ohms());
        } else {
            int own = switches.size();
            switchOf.add(own);
            String name = "S" + own;
            switches.add(new ComponentId(name));
            sketch.component(name, new Switch(List.of("2"), 0.005, 30)).splice("T" + own, 0);
            if (!constant && random.nextInt(3) == 0) {
                sketch.component("K" + own, new Relay(100, 6, 2, 0.003, 40, false));
                sketch.wire("V1" + own, feed, name + ".1", ohms())
                        .wire("V2" + own, name + ".2", "K" + own + ".86", 0.05);
                sketch.wire("V3" + own, "K" + own + ".85", "R0", 0.05)
                        .wire("V4" + own, feed, "K" + own + ".30", ohms());
                sketch.wire("V5" + own, "K" + own + ".87", "T" + own, ohms());
            } else {
                sketch.wire("V1" + own, feed, name + ".1", ohms()).wire("V2" + own, name + ".2", "T" + own, ohms());
            }
            sketch.wire("W" + id, "T" + own, id + ".+", ohms());
        }
        sketch.wire("U" + id, id + ".-", "R" + random.nextInt(4), ohms());
    }

    private Draw draw(double amps) {
        return switch (random.nextInt(4)) {
            case 0 -> new Draw.Resistive(amps, 12);
            case 1 -> new Draw.ConstantPower(10 * amps, 12);
            case 2 -> new Draw.Lamp(10 * amps, 12);
            default -> new Draw.ConstantCurrent(amps, 12);
        };
    }

    private void group(int number, int loads) {
        List<ComponentId> members = new ArrayList<>();
        for (int load = 0; load < loads; load++) {
            if (random.nextInt(2) == 0) {
                members.add(new ComponentId("L" + load));
            }
        }
        if (members.size() < 2) {
            return;
        }
        LoadGroup.Kind kind = LoadGroup.Kind.values()[random.nextInt(3)];
        groups.add(new LoadGroup(
                new LoadGroupId("LG" + number),
                "group " + number,
                kind,
                members,
                kind == LoadGroup.Kind.AT_MOST ? Optional.of(1 + random.nextInt(3)) : Optional.empty()));
    }

    Harness harness() {
        return sketch.harness().withAll(groups).withAll(List.of(state("all", (1L << switches.size()) - 1)));
    }

    /** A state with the switches of a mask on. */
    private OperatingState state(String id, long mask) {
        OperatingState state = OperatingState.of(id, id, EngineMode.RUNNING);
        if (alternator) {
            state = state.withSource(new ComponentId("GEN1"), true);
        }
        for (int number = 0; number < switches.size(); number++) {
            if ((mask >>> number & 1) != 0) {
                state = state.with(switches.get(number), Setting.ON);
            }
        }
        return state;
    }

    private boolean allows(long mask) {
        for (LoadGroup group : groups) {
            long running = group.members().stream()
                    .filter(member -> (mask
                                            >>> switchOf.get(Integer.parseInt(
                                                    member.value().substring(1)))
                                    & 1)
                            != 0)
                    .count();
            boolean together = group.kind() == LoadGroup.Kind.TOGETHER;
            if (together && running > 0 && running < group.members().size() || running > group.mostOn()) {
                return false;
            }
        }
        return true;
    }

    /** Every allowed combination, solved in full. */
    List<Solution> tried(Harness harness) {
        List<Solution> all = new ArrayList<>();
        for (long mask = 0; mask < 1L << switches.size(); mask++) {
            if (allows(mask)) {
                all.add(DcSolver.solve(network(harness, state("try", mask)), harness, () -> false));
            }
        }
        return all;
    }

    /** Whether the switch of a load is on in a solution. */
    boolean runs(Solution solution, ComponentId load) {
        String name = "S" + switchOf.get(Integer.parseInt(load.value().substring(1))) + ".1-2";
        return solution.flow(new BranchId(name)).orElseThrow().ohms().isPresent();
    }

    static Network network(Harness harness, OperatingState state) {
        return NetworkBuilder.build(harness, state, wire -> wire.measuredOhms().orElseThrow(), FuseOhms.NONE);
    }

    /** The envelope of a harness whose wires have measured resistances. */
    static Envelope envelope(Harness harness) {
        SortedMap<StateId, Solution> solutions = new TreeMap<>();
        List<OperatingState> states = List.copyOf(harness.states().all());
        states.forEach(
                state -> solutions.put(state.id(), DcSolver.solve(network(harness, state), harness, () -> false)));
        return EnvelopeStudy.of(new EnvelopeInput(
                harness,
                states,
                solutions,
                state -> network(harness, state),
                network -> DcSolver.solve(network, harness, () -> false),
                () -> false));
    }
}
