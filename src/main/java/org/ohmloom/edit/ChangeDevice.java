package org.ohmloom.edit;

import java.util.function.UnaryOperator;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Device;
import org.ohmloom.model.Harness;
import org.ohmloom.words.Text;

/**
 * Changes what a component does electrically, such as the frequency of its output.
 *
 * @param label     what that does
 * @param component the component
 * @param change    makes the changed device; returns an equal one when nothing changes
 */
public record ChangeDevice(Text label, ComponentId component, UnaryOperator<Device> change) implements Edit {

    @Override
    public Harness apply(Harness before) {
        Component now = before.components().get(component);
        Device changed = change.apply(now.device());
        return changed.equals(now.device()) ? before : before.with(now.withDevice(changed));
    }
}
