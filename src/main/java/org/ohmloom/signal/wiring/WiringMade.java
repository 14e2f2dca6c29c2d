package org.ohmloom.signal.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.PutElements;
import org.ohmloom.model.Cable;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;

/**
 * The wires, splices and cables that join the channels of a harness to their pins, as far as they are not there yet.
 *
 * @param wires    the wires, coloured
 * @param splices  splices of shared supplies and returns
 * @param cables   twisted pairs of pulse sensors and of the data bus, shielded where the sensor asks for it
 * @param problems what could not be made and what would help, a sentence each
 */
public record WiringMade(List<Wire> wires, List<Splice> splices, List<Cable> cables, List<String> problems) {

    public WiringMade {
        wires = List.copyOf(wires);
        splices = List.copyOf(splices);
        cables = List.copyOf(cables);
        problems = List.copyOf(problems);
    }

    /** What is to be made for the channels a harness has. */
    public static WiringMade of(Harness harness) {
        WiringDraft draft = new WiringDraft(harness);
        Map<String, Component> units = new TreeMap<>();
        for (Component component : harness.components().all()) {
            if (component.device() instanceof ControlUnit unit) {
                draft.unit(component, unit);
                units.put(component.id().value(), component);
            }
        }
        draft.bus(List.copyOf(units.values()));
        return draft.made();
    }

    /** Puts it all in, as one step; empty when there is nothing to make. */
    public Optional<Edit> edit() {
        List<Element> elements = new ArrayList<>(splices);
        elements.addAll(cables);
        elements.addAll(wires);
        return elements.isEmpty() ? Optional.empty() : Optional.of(new PutElements("Wire the channels", elements));
    }
}
