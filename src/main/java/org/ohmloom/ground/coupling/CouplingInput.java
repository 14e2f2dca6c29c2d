package org.ohmloom.ground.coupling;

import java.util.List;
import java.util.Map;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.Routes;
import org.ohmloom.ground.sensor.SignalSensitivity;
import org.ohmloom.heat.balance.RoundWire;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;

/**
 * What coupling is worked out from.
 *
 * @param harness the harness
 * @param drawn   its network with nothing switched on
 * @param routes  ways of its wires
 * @param shapes  round wires by their size and insulation
 * @param signals how much a voltage at the pin matters to each sensor
 */
public record CouplingInput(
        Harness harness, Network drawn, Routes routes, Map<WireId, RoundWire> shapes, List<SignalSensitivity> signals) {

    public CouplingInput {
        shapes = Map.copyOf(shapes);
        signals = List.copyOf(signals);
    }
}
