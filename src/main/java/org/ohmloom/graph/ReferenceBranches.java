package org.ohmloom.graph;

import java.util.Optional;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;

/**
 * Branches of the reference supplies and the pull-up resistors of a control unit.
 *
 * <p>Both are regulated sources from the sensor return (the ground rail where there is none) to their pin. Their
 * current I leaves the pin, passes the sensor and comes back at the sensor return, where the source takes it up again;
 * so far nothing is taken from the supply. A series regulator takes the same I from the supply rail: the input branch
 * takes it there and hands it out at the sensor return, from where it goes to ground through the unit's internal
 * resistance. No point gains or loses charge, and the ground wire carries the sensors' current as it does in the
 * vehicle. Where the sensor return is isolated the input hands out at the ground rail instead.
 *
 * <p>The law of the input names its output. A unit that gets no supply gives no reference: whoever solves the network
 * opens an output whose input is in no powered island.
 */
final class ReferenceBranches {
    private final DeviceDraft draft;
    private final ControlUnit unit;
    private final Optional<PointName> supply;
    private final Optional<PointName> below;
    private final Optional<PointName> handOut;

    ReferenceBranches(
            DeviceDraft draft,
            ControlUnit unit,
            Optional<PointName> supply,
            Optional<PointName> ground,
            Optional<PointName> sensorReturn) {
        this.draft = draft;
        this.unit = unit;
        this.supply = supply;
        this.below = sensorReturn.or(() -> ground);
        this.handOut = unit.groundToSensorReturnOhms().isPresent() ? below : ground.or(() -> sensorReturn);
    }

    void add() {
        if (below.isEmpty()) {
            return;
        }
        for (Pin pin : unit.pins()) {
            if (pin.role() == PinRole.REFERENCE_SUPPLY) {
                pin.referenceVolts()
                        .ifPresent(volts -> regulator(pin, volts, pin.onOhms().orElse(0)));
            } else if (pin.pullUpOhms().isPresent()) {
                pin.pullUpVolts()
                        .ifPresent(
                                volts -> regulator(pin, volts, pin.pullUpOhms().getAsDouble()));
            }
        }
    }

    private void regulator(Pin pin, double volts, double ohms) {
        double limitAmps = pin.role() == PinRole.REFERENCE_SUPPLY
                ? pin.limitAmps().orElse(Double.POSITIVE_INFINITY)
                : Double.POSITIVE_INFINITY;
        String input = pin.name() + "~input";
        draft.branch(
                pin.name(),
                BranchKind.REGULATED_OUTPUT,
                below.get(),
                draft.terminal(pin.name()),
                Law.VoltageSource.regulated(volts, ohms, limitAmps));
        if (supply.isPresent() && handOut.isPresent()) {
            draft.branch(
                    input,
                    BranchKind.REGULATED_INPUT,
                    supply.get(),
                    handOut.get(),
                    new Law.CurrentOf(new BranchId(draft.name(pin.name()))));
        }
    }
}
