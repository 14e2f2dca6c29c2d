package org.ohmloom.ground;

import java.util.Map;
import org.ohmloom.graph.FoundLoops;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.Routes;
import org.ohmloom.heat.balance.RoundWire;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;

/**
 * What the loops of a harness are read from.
 *
 * @param harness the harness
 * @param drawn   its network with nothing switched on
 * @param found   its loops
 * @param routes  ways of its wires
 * @param shapes  round wires by their size and insulation
 */
public record LoopInput(
        Harness harness, Network drawn, FoundLoops found, Routes routes, Map<WireId, RoundWire> shapes) {

    public LoopInput {
        shapes = Map.copyOf(shapes);
    }
}
