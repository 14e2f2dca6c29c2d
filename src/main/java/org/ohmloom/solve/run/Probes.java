package org.ohmloom.solve.run;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.WarmNetwork;

/**
 * What is read at every instant of the runs in one state: the supply of loads that draw and of control units, the current of
 * protective devices, the coils of relays that are pulled in, outputs with a limit.
 *
 * @param supplies supplies
 * @param devices  protective devices
 * @param coils    coils
 * @param outputs  outputs with an electronic limit
 */
record Probes(List<Supply> supplies, List<Guarded> devices, List<Coil> coils, List<OutputLimits.Limited> outputs) {

    /** Share of its limit from which an output counts as giving it. */
    static final double AT_LIMIT_SHARE = 1 - 1e-6;

    private static final double ON_AMPS = 1e-6;

    /**
     * A load or control unit.
     *
     * @param id           which
     * @param controlUnit  whether it is a control unit
     * @param positive     its positive point
     * @param negative     its negative point
     * @param minimumVolts least voltage it works at, V, if known
     * @param holdSecondsPerVolt input capacitance over the unit's own draw, s/V; 0 without
     */
    record Supply(
            ComponentId id,
            boolean controlUnit,
            PointId positive,
            PointId negative,
            OptionalDouble minimumVolts,
            double holdSecondsPerVolt) {

        /** Time its capacitor carries it from a voltage to its minimum, s: C (V - Vmin) / I. */
        double holdSeconds(double beforeVolts) {
            return minimumVolts.isPresent()
                    ? Math.max(0, holdSecondsPerVolt * (beforeVolts - minimumVolts.getAsDouble()))
                    : 0;
        }
    }

    /**
     * A protective device.
     *
     * @param id         which
     * @param branch     its branch
     * @param ratingAmps its rating, A
     */
    record Guarded(ComponentId id, BranchId branch, double ratingAmps) {}

    /**
     * The coil of a relay.
     *
     * @param id           the relay
     * @param branch       the branch of the coil
     * @param dropOutVolts its drop-out voltage, V
     */
    record Coil(ComponentId id, BranchId branch, double dropOutVolts) {}

    static Probes of(Harness harness, Solution solution, List<OutputLimits.Limited> outputs) {
        Network network = solution.network();
        List<Supply> supplies = new ArrayList<>();
        List<Guarded> devices = new ArrayList<>();
        List<Coil> coils = new ArrayList<>();
        for (Component component : harness.components().all()) {
            if (component.device() instanceof ControlUnit unit) {
                control(network, component.id(), unit, supplies);
            }
            for (Branch branch : network.of(component.id())) {
                if (component.device() instanceof Load load
                        && branch.kind() == BranchKind.LOAD
                        && Math.abs(solution.flow(branch.id()).orElseThrow().onAmps()) > ON_AMPS) {
                    supplies.add(new Supply(component.id(), false, branch.from(), branch.to(), load.minimumVolts(), 0));
                } else if (component.device() instanceof ProtectiveDevice device
                        && !(branch.law() instanceof Law.Open)) {
                    devices.add(new Guarded(component.id(), branch.id(), device.ratingAmps()));
                } else if (branch.law() instanceof Law.CoilOperated contact
                        && MomentNetwork.isClosed(solution, branch) != contact.closedAtRest()
                        && coils.stream().noneMatch(coil -> coil.branch().equals(contact.coil()))) {
                    coils.add(new Coil(component.id(), contact.coil(), contact.dropOutVolts()));
                }
            }
        }
        return new Probes(supplies, devices, coils, outputs);
    }

    private static void control(Network network, ComponentId id, ControlUnit unit, List<Supply> supplies) {
        unit.pinsOf(PinRole.SUPPLY)
                .findFirst()
                .flatMap(pin -> network.index().terminal(id, pin.name()))
                .ifPresent(positive -> unit.pinsOf(PinRole.GROUND)
                        .findFirst()
                        .flatMap(pin -> network.index().terminal(id, pin.name()))
                        .ifPresent(negative -> supplies.add(new Supply(
                                id, true, positive, negative, unit.minimumVolts(), holdSecondsPerVolt(unit)))));
    }

    private static double holdSecondsPerVolt(ControlUnit unit) {
        return unit.drawAmps() > 0 ? unit.inputFarads().orElse(0) / unit.drawAmps() : 0;
    }

    /** Count of values read for so many starters. */
    int count(int starters) {
        return 2 * starters + supplies.size() + devices.size() + coils.size() + outputs.size();
    }

    /** Index of the first supply among the values. */
    static int firstSupply(int starters) {
        return 2 * starters;
    }

    int firstDevice(int starters) {
        return 2 * starters + supplies.size();
    }

    int firstCoil(int starters) {
        return firstDevice(starters) + devices.size();
    }

    int firstOutput(int starters) {
        return firstCoil(starters) + coils.size();
    }

    /** Reads current and voltage of each starter, then the supplies, devices and coils. */
    double[] read(WarmNetwork network, List<Starter> starters) {
        double[] values = new double[count(starters.size())];
        int at = 0;
        for (Starter starter : starters) {
            values[at++] = starter.amps(network);
            values[at++] = starter.volts(network);
        }
        for (Supply supply : supplies) {
            values[at++] = network.volts(supply.positive(), supply.negative());
        }
        for (Guarded device : devices) {
            values[at++] = Math.abs(network.amps(device.branch()));
        }
        for (Coil coil : coils) {
            values[at++] = Math.abs(network.volts(coil.branch()));
        }
        for (OutputLimits.Limited output : outputs) {
            values[at++] = Math.abs(network.amps(output.branch()));
        }
        return values;
    }
}
