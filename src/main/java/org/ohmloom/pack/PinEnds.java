package org.ohmloom.pack;

import java.util.List;
import java.util.stream.Collectors;
import org.ohmloom.model.ComponentId;
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
        return wires(harness.endsAt(component, terminal));
    }

    private List<Wire> wires(List<WireEnd> ends) {
        return harness.wires().all().stream()
                .filter(wire -> wire.ends().stream().anyMatch(ends::contains))
                .toList();
    }

    /** Where the other ends of those wires are, as people write it. */
    String others(ComponentId component, String terminal) {
        List<WireEnd> ends = harness.endsAt(component, terminal);
        return wires(ends).stream()
                .map(wire -> ends.contains(wire.from()) ? wire.to() : wire.from())
                .map(WireEnd::text)
                .distinct()
                .collect(Collectors.joining(", "));
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
        return harness.endsAt(component, terminal).stream()
                .filter(WireEnd.AtCavity.class::isInstance)
                .map(WireEnd::text)
                .findFirst()
                .orElse("");
    }
}
