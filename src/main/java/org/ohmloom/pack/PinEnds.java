package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/** The wires at a terminal of a component, and the cavity they are in. */
final class PinEnds {

    private final Harness harness;

    PinEnds(Harness harness) {
        this.harness = harness;
    }

    /** Wires with an end on that terminal or in a cavity that leads to it. */
    List<Wire> wires(ComponentId component, String terminal) {
        return harness.wires().all().stream()
                .filter(wire -> wire.ends().stream().anyMatch(end -> isAt(end, component, terminal)))
                .toList();
    }

    /** Where the other ends of those wires are, as people write it. */
    String others(ComponentId component, String terminal) {
        List<String> texts = new ArrayList<>();
        for (Wire wire : wires(component, terminal)) {
            WireEnd other = isAt(wire.from(), component, terminal) ? wire.to() : wire.from();
            texts.add(other.text());
        }
        return texts.stream().distinct().collect(Collectors.joining(", "));
    }

    /** Insulation colours of those wires: "BURD"; "-" where none is chosen, empty without a wire. */
    String colours(ComponentId component, String terminal) {
        return wires(component, terminal).stream()
                .map(wire -> wire.colour().map(colour -> colour.text()).orElse("-"))
                .distinct()
                .collect(Collectors.joining(", "));
    }

    /** The cavity that leads to a terminal: "X8.3"; empty where none does. */
    String cavity(ComponentId component, String terminal) {
        for (Connector connector : harness.connectors().all()) {
            if (connector.component().filter(component::equals).isPresent()) {
                for (Cavity cavity : connector.cavities()) {
                    if (cavity.terminal().filter(terminal::equals).isPresent()) {
                        return connector.id() + "." + cavity.name();
                    }
                }
            }
        }
        return "";
    }

    private boolean isAt(WireEnd end, ComponentId component, String terminal) {
        if (end instanceof WireEnd.AtTerminal at) {
            return at.component().equals(component) && at.terminal().equals(terminal);
        }
        if (end instanceof WireEnd.AtCavity at) {
            Connector connector = harness.connectors().get(at.connector());
            Optional<String> leads = connector.cavity(at.cavity()).flatMap(Cavity::terminal);
            return connector.component().filter(component::equals).isPresent()
                    && leads.filter(terminal::equals).isPresent();
        }
        return false;
    }
}
