package org.ohmloom.judged;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Pin;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/**
 * What a return that opens, or a fuse that is pulled, sends through the pins of control units: each opened in turn in every state, the
 * circuit solved anew, and the RMS current of each pin held against what the pin may carry.
 */
final class PlainLoss {

    private final Harness harness;

    /** Most current by the cavity of the pin, A. */
    private final Map<String, Double> limits = new TreeMap<>();

    private final Map<OperatingState, Map<String, Double>> whole = new HashMap<>();

    PlainLoss(Harness harness) {
        this.harness = harness;
        for (Component component : harness.components().all()) {
            if (component.device() instanceof ControlUnit unit) {
                unit.pins().forEach(pin -> limit(component, pin));
            }
        }
        harness.states().all().forEach(state -> whole.put(state, amps(new PlainState(harness, state))));
    }

    private void limit(Component unit, Pin pin) {
        String connector = unit.id().value().equals(SoundHarness.UNIT) ? "XU" : "X" + unit.id();
        pin.limitAmps().ifPresent(amps -> limits.put(connector + "." + pin.name(), amps));
    }

    /** RMS current of each pin with a limit: the sum over the wires at it. */
    private Map<String, Double> amps(PlainState state) {
        Map<String, Double> amps = new HashMap<>();
        for (String pin : limits.keySet()) {
            List<ToDoubleFunction<PlainSolve>> currents = new ArrayList<>();
            for (Wire wire : harness.wires().all()) {
                for (boolean outward : new boolean[] {true, false}) {
                    WireEnd here = outward ? wire.from() : wire.to();
                    WireEnd there = outward ? wire.to() : wire.from();
                    if (here.text().equals(pin)) {
                        String one = PlainJudge.point(wire, here);
                        String other = PlainJudge.point(wire, there);
                        double ohms = wire.measuredOhms().orElseThrow();
                        currents.add(solve -> (solve.volts(one) - solve.volts(other)) / ohms);
                    }
                }
            }
            amps.put(pin, state.rms(solve -> currents.stream()
                    .mapToDouble(each -> each.applyAsDouble(solve))
                    .sum()));
        }
        return amps;
    }

    /** Shares by rule and opened element. */
    SortedMap<String, Double> shares() {
        return shares(openings());
    }

    /** The same for some elements. */
    SortedMap<String, Double> shares(List<String> openings) {
        SortedMap<String, Double> shares = new TreeMap<>();
        openings.forEach(opened -> shares.put("lost-return-overloads " + opened, share(opened)));
        return shares;
    }

    private List<String> openings() {
        List<String> openings = new ArrayList<>();
        harness.grounds().ids().forEach(ground -> openings.add(ground.value()));
        harness.straps().ids().forEach(strap -> openings.add(strap.value()));
        for (Wire wire : harness.wires().all()) {
            boolean grounded = wire.ends().stream().anyMatch(WireEnd.AtGround.class::isInstance);
            if (grounded || wire.signalClass() == SignalClass.RETURN) {
                openings.add(wire.id().value());
            }
        }
        for (Component component : harness.components().all()) {
            if (component.device() instanceof ProtectiveDevice) {
                openings.add(component.id().value());
            }
        }
        return openings;
    }

    /** The largest current a pin then has that it did not have before, as a share of what it may carry. */
    double share(String opened) {
        double most = 0;
        for (OperatingState state : harness.states().all()) {
            Map<String, Double> before = whole.get(state);
            Map<String, Double> after = amps(new PlainState(harness, state, opened, Optional.empty()));
            for (Map.Entry<String, Double> limit : limits.entrySet()) {
                if (before.get(limit.getKey()) <= limit.getValue()) {
                    most = Math.max(most, after.get(limit.getKey()) / limit.getValue());
                }
            }
        }
        return most;
    }
}
