package org.ohmloom.signal.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.PutElements;
import org.ohmloom.model.Cable;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;
import org.ohmloom.signal.SignalTexts;

/**
 * The wires, splices and cables that join the channels of a harness to their pins, as far as they are not there yet.
 *
 * @param wires    the wires, coloured
 * @param splices  splices of shared supplies and returns
 * @param cables   twisted pairs of pulse sensors and of the data bus, shielded where the sensor asks for it
 * @param fuses    fuses of what low-side outputs switch
 * @param buses    data buses that are new, or have nodes or terminations more
 * @param moved    wires that were at a pin and now end at a splice beside it
 * @param problems what could not be made and what would help, a sentence each
 */
public record WiringMade(
        List<Wire> wires,
        List<Splice> splices,
        List<Cable> cables,
        List<Component> fuses,
        List<DataBus> buses,
        List<Wire> moved,
        List<String> problems) {

    public WiringMade {
        wires = List.copyOf(wires);
        splices = List.copyOf(splices);
        cables = List.copyOf(cables);
        fuses = List.copyOf(fuses);
        buses = List.copyOf(buses);
        moved = List.copyOf(moved);
        problems = List.copyOf(problems);
    }

    /** What is to be made for the channels a harness has. */
    public static WiringMade of(Harness harness) {
        WiringDraft draft = new WiringDraft(harness);
        for (Component component : harness.components().all()) {
            if (component.device() instanceof ControlUnit unit) {
                draft.unit(component, unit);
            }
        }
        draft.buses();
        return draft.made();
    }

    /** Puts it all in, as one step; empty when there is nothing to make. */
    public Optional<Edit> edit() {
        List<Element> elements = new ArrayList<>(splices);
        elements.addAll(cables);
        elements.addAll(fuses);
        elements.addAll(wires);
        elements.addAll(moved);
        elements.addAll(buses);
        return elements.isEmpty()
                ? Optional.empty()
                : Optional.of(new PutElements(SignalTexts.text("wire-channels"), elements));
    }
}
