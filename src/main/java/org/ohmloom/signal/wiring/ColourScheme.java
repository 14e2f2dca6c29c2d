package org.ohmloom.signal.wiring;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
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
    private static final Map<SignalClass, String> USUAL = usual();
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

    private static Map<SignalClass, String> usual() {
        Map<SignalClass, String> usual = new EnumMap<>(SignalClass.class);
        usual.put(SignalClass.FEED, "RD");
        usual.put(SignalClass.SWITCHED_OUTPUT, "OG");
        usual.put(SignalClass.RETURN, "BK");
        usual.put(SignalClass.REFERENCE_SUPPLY, "PK");
        usual.put(SignalClass.REFERENCE_RETURN, "GN");
        usual.put(SignalClass.ANALOGUE_SIGNAL, "BU");
        usual.put(SignalClass.PULSE_SIGNAL, "VT");
        usual.put(SignalClass.DATA_BUS, "YE");
        usual.put(SignalClass.SHIELD, "GY");
        return Collections.unmodifiableMap(usual);
    }

    private static List<WireColour> usual(SignalClass signalClass) {
        String base = USUAL.getOrDefault(signalClass, "WH");
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
        Set<ConnectorId> passed = new HashSet<>();
        line.forEach(wire -> passed.addAll(connectors(wire)));
        List<WireColour> possible = choices.getOrDefault(signalClass, List.of());
        WireColour best = possible.get(0);
        long fewest = Long.MAX_VALUE;
        for (WireColour colour : possible) {
            long alike = passed.stream()
                    .mapToLong(connector -> used.getOrDefault(connector, Map.of())
                            .getOrDefault(colour, Set.of())
                            .size())
                    .sum();
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
}
