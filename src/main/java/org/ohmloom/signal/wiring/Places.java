package org.ohmloom.signal.wiring;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/** Where wires that are made can end, and which cavities they leave free. */
final class Places {
    private final Harness harness;
    private final Set<WireEnd> taken = new HashSet<>();

    Places(Harness harness) {
        this.harness = harness;
        for (Wire wire : harness.wires().all()) {
            taken.add(wire.from());
            taken.add(wire.to());
        }
    }

    /** Where a wire to a terminal ends: in the cavity that meets it, else on the terminal. */
    WireEnd end(ComponentId component, String terminal) {
        List<WireEnd> ends = harness.endsAt(component, terminal);
        return ends.get(Math.min(1, ends.size() - 1));
    }

    /** Where an end lies on the physical harness, if that is entered. */
    Optional<BreakoutId> at(WireEnd end) {
        if (end instanceof WireEnd.AtCavity cavity) {
            return harness.breakout(harness.connectors().get(cavity.connector()));
        }
        if (end instanceof WireEnd.AtTerminal terminal) {
            return harness.components().get(terminal.component()).at();
        }
        return end instanceof WireEnd.AtGround ground
                ? harness.grounds().get(ground.ground()).at()
                : Optional.empty();
    }

    /** The assembly a wire belongs to that ends there. */
    Optional<AssemblyId> assembly(WireEnd end) {
        if (end instanceof WireEnd.AtCavity cavity) {
            return harness.connectors().get(cavity.connector()).assembly();
        }
        if (end instanceof WireEnd.AtTerminal terminal) {
            Component component = harness.components().get(terminal.component());
            return component.assembly();
        }
        return Optional.empty();
    }

    boolean isTaken(WireEnd end) {
        return taken.contains(end);
    }

    void take(WireEnd end) {
        taken.add(end);
    }

    /** The first cavity that is free on both sides of an in-line pair. */
    Optional<String> freeCavity(Connector connector) {
        return freeCavities(connector).findFirst();
    }

    /** The cavities that are free on both sides of an in-line pair, in order. */
    Stream<String> freeCavities(Connector connector) {
        return harness.mate(connector).stream().flatMap(mate -> connector.cavities().stream()
                .map(Cavity::name)
                .filter(name -> mate.cavity(name).isPresent())
                .filter(name -> !isTaken(new WireEnd.AtCavity(connector.id(), name))
                        && !isTaken(new WireEnd.AtCavity(mate.id(), name))));
    }
}
