package org.ohmloom.ground;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;

/**
 * Tells what members of a loop are there for.
 *
 * @param harness the harness
 */
public record LoopMembers(Harness harness) {

    private static final Set<SignalClass> SIGNALS = Set.of(
            SignalClass.REFERENCE_RETURN,
            SignalClass.ANALOGUE_SIGNAL,
            SignalClass.PULSE_SIGNAL,
            SignalClass.DATA_BUS,
            SignalClass.SHIELD);

    /**
     * Whether a member is meant only for signals, a shield or a case: a wire of such a class, the inside of a control unit, the joint
     * of a control unit's case or sensor return, or of a sensor, on a ground point. The common return of a converter carries power.
     */
    public boolean isSignal(Branch member) {
        return switch (member.kind()) {
            case WIRE, SHIELD -> wire(member)
                    .filter(wire -> SIGNALS.contains(wire.signalClass()))
                    .isPresent();
            case INTERNAL -> component(member)
                    .filter(each -> each.device() instanceof ControlUnit)
                    .isPresent();
            case JOINT -> component(member).filter(LoopMembers::isCaseOfSignals).isPresent();
            default -> false;
        };
    }

    private static boolean isCaseOfSignals(Component component) {
        if (component.device() instanceof ControlUnit unit) {
            return component.caseGround().isPresent()
                    && unit.pins().stream()
                            .filter(pin -> pin.name()
                                    .equals(component.caseGround().get().terminal()))
                            .anyMatch(pin -> pin.role() == PinRole.CASE || pin.role() == PinRole.SENSOR_RETURN);
        }
        return component.device() instanceof Sensor;
    }

    /** The members of a loop in which load current is told: its signal wires and shields; where it has none, all others of its kind. */
    public List<Branch> signals(List<Branch> members) {
        List<Branch> signals = members.stream().filter(this::isSignal).toList();
        List<Branch> wires =
                signals.stream().filter(member -> wire(member).isPresent()).toList();
        return wires.isEmpty() ? signals : wires;
    }

    /** The wire a member is. */
    public Optional<Wire> wire(Branch member) {
        boolean isWire = member.kind() == BranchKind.WIRE || member.kind() == BranchKind.SHIELD;
        return member.element().filter(id -> isWire && id instanceof WireId).flatMap(id -> harness.wires()
                .find((WireId) id));
    }

    /** The component a member belongs to. */
    private Optional<Component> component(Branch member) {
        return member.element().filter(ComponentId.class::isInstance).flatMap(id -> harness.components()
                .find((ComponentId) id));
    }
}
