package org.ohmloom.signal.wiring;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireColour;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WiringRules;

/**
 * Gives wires their colours: by what they carry, as the harness's rules say, else the usual ones (our own choice, no source; codes of IEC
 * 60757). All wires of one line have one colour; of the choices the first is taken that fewest wires in the connectors it passes have.
 */
final class ColourScheme {
    private static final List<String> TRACERS =
            List.of("", "WH", "RD", "YE", "GN", "GY", "VT", "BN", "BK", "OG", "PK", "BU");

    private final Map<SignalClass, List<WireColour>> choices = new EnumMap<>(SignalClass.class);
    private final Map<ConnectorId, Map<WireColour, Set<Object>>> used = new HashMap<>();

    ColourScheme(Harness harness) {
        for (SignalClass signalClass : SignalClass.values()) {
            choices.put(signalClass, usual(signalClass));
        }
        for (WiringRules.Colours each : harness.rules().wiringRules().colours()) {
            choices.put(each.signalClass(), each.choices());
        }
        harness.wires().all().forEach(wire -> wire.colour()
                .ifPresent(colour -> connectors(wire).forEach(connector -> use(connector, colour, wire.id()))));
    }

    private static List<WireColour> usual(SignalClass signalClass) {
        String base = WireColour.usual(signalClass).text();
        List<WireColour> colours = new ArrayList<>();
        for (String tracer : TRACERS) {
            if (!tracer.equals(base)) {
                colours.add(WireColour.parse(base + tracer));
            }
        }
        return colours;
    }

    private static List<ConnectorId> connectors(Wire wire) {
        List<ConnectorId> connectors = new ArrayList<>();
        for (WireEnd end : wire.ends()) {
            if (end instanceof WireEnd.AtCavity at) {
                connectors.add(at.connector());
            }
        }
        return connectors;
    }

    private void use(ConnectorId connector, WireColour colour, Object line) {
        used.computeIfAbsent(connector, id -> new HashMap<>())
                .computeIfAbsent(colour, each -> new HashSet<>())
                .add(line);
    }

    /** The colour of a line; from then on it is in use in the connectors the line passes. */
    WireColour next(SignalClass signalClass, Collection<Wire> line) {
        return next(signalClass, line, Optional.empty());
    }

    /** The colour of a line that runs beside another one whose colour it is not to have. */
    WireColour next(SignalClass signalClass, Collection<Wire> line, Optional<WireColour> beside) {
        Set<ConnectorId> passed = new HashSet<>();
        line.forEach(wire -> passed.addAll(connectors(wire)));
        List<WireColour> possible = choices.getOrDefault(signalClass, List.of());
        WireColour best = possible.get(0);
        long fewest = Long.MAX_VALUE;
        for (WireColour colour : possible) {
            boolean same = possible.size() > 1 && beside.filter(colour::equals).isPresent();
            long alike = same ? Long.MAX_VALUE - 1 : alike(passed, colour);
            if (alike < fewest) {
                fewest = alike;
                best = colour;
            }
        }
        for (ConnectorId connector : passed) {
            use(connector, best, new Object());
        }
        return best;
    }

    /** How many lines of the connectors a line passes have a colour. */
    private long alike(Set<ConnectorId> passed, WireColour colour) {
        return passed.stream()
                .mapToLong(connector -> used.getOrDefault(connector, Map.of())
                        .getOrDefault(colour, Set.of())
                        .size())
                .sum();
    }
}
