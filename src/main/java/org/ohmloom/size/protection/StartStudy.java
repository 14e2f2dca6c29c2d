package org.ohmloom.size.protection;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Inrush;
import org.ohmloom.model.Load;
import org.ohmloom.model.ProtectiveDevice;

/**
 * What starts behind each protective device: the peak from the real network, the load at standstill or cold, batteries full and
 * every source running; what else the device carries is added.
 */
final class StartStudy {

    /**
     * A load that starts.
     *
     * @param load         the load
     * @param ratedAmps    running current at its rated voltage, A
     * @param decaySeconds time constant of its start, s; 0 when it is not entered
     * @param deviceAmps   current through each device at the first moment, A
     */
    record Start(ComponentId load, double ratedAmps, double decaySeconds, Map<ComponentId, Double> deviceAmps) {}

    private final List<Start> starts = new ArrayList<>();
    private final SortedSet<ComponentId> untimed = new TreeSet<>();

    StartStudy(ProtectionInput input, FaultNetworks networks) {
        for (Component component : input.harness().components().all()) {
            if (component.device() instanceof Load load) {
                input.drawn().of(component.id()).stream()
                        .filter(branch -> branch.kind() == BranchKind.LOAD)
                        .findFirst()
                        .ifPresent(branch -> add(input, networks, component.id(), load, branch));
            }
        }
    }

    private void add(ProtectionInput input, FaultNetworks networks, ComponentId id, Load load, Branch branch) {
        Optional<Double> ohms = ohms(load);
        if (ohms.isEmpty()) {
            return;
        }
        double seconds = decaySeconds(load);
        networks.cool()
                .flows(branch.from(), branch.to(), ohms.get(), input.upstream().sources(), true)
                .ifPresent(flows -> {
                    Map<ComponentId, Double> through = new HashMap<>();
                    for (Component device : input.harness().components().all()) {
                        double amps = device.device() instanceof ProtectiveDevice
                                ? flows.through(new BranchId(device.id().value()))
                                : 0;
                        if (amps > 0) {
                            through.put(device.id(), amps);
                        }
                    }
                    if (seconds > 0) {
                        starts.add(new Start(id, load.draw().ratedAmps(), seconds, through));
                    } else if (!through.isEmpty()) {
                        untimed.add(id);
                    }
                });
    }

    /** Resistance at the first moment, ohm; empty for a load that starts no harder than it runs. */
    private static Optional<Double> ohms(Load load) {
        Draw draw = load.draw();
        if (load.inrush().isPresent()) {
            return Optional.of(draw.ratedVolts() / load.inrush().get().peakAmps());
        }
        if (draw instanceof Draw.MagnetMotor motor) {
            return Optional.of(motor.ratedVolts() / motor.startAmps());
        }
        return draw instanceof Draw.Motor motor && motor.startAmps() > motor.ratedAmps()
                ? Optional.of(motor.standstillOhms())
                : Optional.empty();
    }

    private static double decaySeconds(Load load) {
        return load.inrush()
                .map(Inrush::decaySeconds)
                .orElse(load.draw() instanceof Draw.MagnetMotor motor ? motor.startSeconds() : 0.0);
    }

    /** The starts through a device. */
    List<Start> through(ComponentId device) {
        return starts.stream()
                .filter(start -> start.deviceAmps().containsKey(device))
                .toList();
    }

    /** Motors whose start current is entered but not how long it lasts. */
    SortedSet<ComponentId> untimed() {
        return untimed;
    }
}
