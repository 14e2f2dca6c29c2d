package org.ohmloom.solve.envelope;

import java.util.Optional;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.OutputPin;
import org.ohmloom.model.Switch;

/**
 * Something an operating state sets so that a load runs: a switch in one of its positions, an electronic switch, an output
 * pin, or the command of a load.
 *
 * @param component the component; the control unit of an output pin
 * @param part      position of a switch or name of an output pin; empty for others
 * @param isPin     whether it is an output pin
 */
record Control(ComponentId component, String part, boolean isPin) implements Comparable<Control> {

    /** The command of a load. */
    static Control command(ComponentId load) {
        return new Control(load, "", false);
    }

    /** The control a branch belongs to: of a switch, an electronic switch or an output pin; empty for other branches. */
    static Optional<Control> of(Branch branch) {
        return branch.element()
                .filter(element -> !(branch.law() instanceof Law.Threshold))
                .filter(ComponentId.class::isInstance)
                .map(ComponentId.class::cast)
                .flatMap(component -> of(branch, component));
    }

    private static Optional<Control> of(Branch branch, ComponentId component) {
        if (branch.kind() == BranchKind.SOLID_STATE_OUTPUT) {
            return Optional.of(command(component));
        }
        String rest = branch.id()
                .value()
                .substring(
                        Math.min(branch.id().value().length(), component.value().length()));
        String part = rest.startsWith(".") ? rest.substring(1) : rest;
        if (branch.kind() == BranchKind.SWITCH) {
            String before = Switch.COMMON + "-";
            return Optional.of(
                    new Control(component, part.startsWith(before) ? part.substring(before.length()) : part, false));
        }
        return branch.kind() == BranchKind.OUTPUT_PIN
                ? Optional.of(new Control(component, part, true))
                : Optional.empty();
    }

    /** The output pin it is. */
    OutputPin pin() {
        return new OutputPin(component, part);
    }

    /** Whether it is another position of the same switch. */
    boolean excludes(Control other) {
        return !isPin && !other.isPin && component.equals(other.component) && !part.equals(other.part);
    }

    /** For people and for order: {@code S1}, {@code S1:high}, {@code U1.HS1}. */
    String text() {
        return component + (part.isEmpty() ? "" : (isPin ? "." : ":") + part);
    }

    @Override
    public int compareTo(Control other) {
        return NaturalOrder.INSTANCE.compare(text(), other.text());
    }
}
