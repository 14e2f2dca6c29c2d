package org.ohmloom.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Driver;
import org.ohmloom.model.Harness;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.SolidStateOutput;

/**
 * An output of a control unit, or a stand-alone one, that switches loads.
 *
 * @param component the component it belongs to
 * @param branch    its branch
 * @param limitAmps most continuous current, A, if entered
 * @param driver    how it switches, if entered
 */
record DrivenOutput(Component component, BranchId branch, OptionalDouble limitAmps, Optional<Driver> driver) {

    /** All outputs of a harness. */
    static List<DrivenOutput> of(Harness harness) {
        List<DrivenOutput> outputs = new ArrayList<>();
        for (Component component : harness.components().all()) {
            if (component.device() instanceof SolidStateOutput output) {
                outputs.add(new DrivenOutput(
                        component,
                        new BranchId(component.id().value()),
                        OptionalDouble.of(output.limitAmps()),
                        output.driver()));
            } else if (component.device() instanceof ControlUnit unit) {
                unit.pins().stream()
                        .filter(pin -> pin.role() == PinRole.HIGH_SIDE_OUTPUT || pin.role() == PinRole.LOW_SIDE_OUTPUT)
                        .forEach(pin -> outputs.add(new DrivenOutput(
                                component,
                                new BranchId(component.id() + "." + pin.name()),
                                pin.limitAmps(),
                                pin.driver())));
            }
        }
        return outputs;
    }
}
