package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.words.Text;

/**
 * Sets the rated current of loads, keeping the voltage it was given at; a power rating changes with it.
 *
 * @param loads     the loads
 * @param ratedAmps rated current, A, more than 0
 */
public record SetLoadCurrent(List<ComponentId> loads, double ratedAmps) implements Edit {

    public SetLoadCurrent {
        loads = List.copyOf(loads);
    }

    @Override
    public Text label() {
        return Labels.text("set-current", Labels.subjects(loads, "loads"));
    }

    @Override
    public Harness apply(Harness before) {
        List<Element> changed = new ArrayList<>();
        for (ComponentId id : loads) {
            Component component = before.components().get(id);
            if (component.device() instanceof Load load && load.draw().ratedAmps() != ratedAmps) {
                changed.add(component.withDevice(load.withDraw(load.draw().withRatedAmps(ratedAmps))));
            }
        }
        return before.withAll(changed);
    }
}
