package org.ohmloom.signal.unit;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/**
 * What wires, splices, ground points and mated cavities join: which terminals of components hang together without a device between
 * them.
 */
public final class Joints {
    private final Harness harness;
    private final Map<String, String> above = new HashMap<>();
    private final Set<String> joined = new HashSet<>();
    private final Map<String, SortedSet<String>> terminals = new HashMap<>();

    private Joints(Harness harness) {
        this.harness = harness;
    }

    /** The joints of a harness. */
    public static Joints of(Harness harness) {
        Joints joints = new Joints(harness);
        for (Wire wire : harness.wires().all()) {
            if (!(wire.from() instanceof WireEnd.Loose) && !(wire.to() instanceof WireEnd.Loose)) {
                joints.join(joints.place(wire.from()), joints.place(wire.to()));
            }
        }
        harness.components().all().forEach(component -> component
                .caseGround()
                .ifPresent(ground -> joints.join(
                        terminal(component.id(), ground.terminal()),
                        ground.ground().value())));
        harness.components().all().forEach(component -> component.terminals().forEach(name -> {
            String own = terminal(component.id(), name);
            joints.terminals
                    .computeIfAbsent(joints.root(own), root -> new TreeSet<>())
                    .add(own);
        }));
        return joints;
    }

    /** Name of a terminal among the joints. */
    public static String terminal(ComponentId component, String name) {
        return component + "." + name;
    }

    /** Whether a wire, or the case, leads to a terminal. */
    public boolean isJoined(ComponentId component, String name) {
        return joined.contains(terminal(component, name));
    }

    /** All terminals joined with one, itself among them. */
    public SortedSet<String> with(ComponentId component, String name) {
        return terminals.getOrDefault(root(terminal(component, name)), new TreeSet<>());
    }

    /** Whether a terminal hangs together with a place a wire can end. */
    public boolean isWith(ComponentId component, String name, WireEnd end) {
        return root(terminal(component, name)).equals(root(place(end)));
    }

    private void join(String one, String other) {
        above.put(root(one), root(other));
        joined.add(one);
        joined.add(other);
    }

    private String place(WireEnd end) {
        if (end instanceof WireEnd.AtTerminal at) {
            return terminal(at.component(), at.terminal());
        }
        if (end instanceof WireEnd.AtCavity at) {
            Connector connector = harness.connectors().get(at.connector());
            Optional<Connector> mate = harness.mate(connector);
            if (mate.isPresent()) {
                String one = connector.id().value();
                String other = mate.get().id().value();
                return "mated " + (one.compareTo(other) < 0 ? one : other) + "." + at.cavity();
            }
            return connector
                    .component()
                    .flatMap(component -> connector
                            .cavity(at.cavity())
                            .flatMap(Cavity::terminal)
                            .map(name -> terminal(component, name)))
                    .orElse("cavity " + at.text());
        }
        return end.text();
    }

    private String root(String place) {
        String root = place;
        for (String next = above.get(root); next != null && !next.equals(root); next = above.get(root)) {
            root = next;
        }
        return root;
    }
}
