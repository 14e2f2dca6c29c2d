package org.ohmloom.signal.bus.wiring;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.BusLimit;

/**
 * How one data bus is wired.
 *
 * <p>The trunk is the way between the two terminations furthest apart along the high line, or without two of them between the two nodes
 * furthest apart; what leads from it to a node is that node's stub.
 *
 * @param bus          the bus
 * @param limits       the limits it is held against; empty where the set lists none for the bit rate
 * @param nodes        its nodes, in the order of the bus
 * @param farthest     the two joined nodes furthest apart along the high line; empty where fewer than two are joined
 * @param trunkMetres  length of the trunk, m
 * @param stubsMetres  length of all stubs together, m
 * @param wires        wires of both lines
 * @param trunkWires   wires of the high line's trunk
 * @param unmeasured   wires of both lines whose length is not known: they count as 0
 * @param loopOhms     resistance of the trunk, high and low line together, ohm
 * @param allowedOhms  the most it may be with so many nodes, ohm
 * @param allowedNodes the most nodes a driver serves by the direct current they take
 * @param untwisted    wires of both lines that are no cores of a twisted pair with the other line
 * @param problems     what is wrong with it
 */
public record BusWiring(
        DataBus bus,
        Optional<BusLimit> limits,
        List<NodePlace> nodes,
        List<DataBus.Node> farthest,
        double trunkMetres,
        double stubsMetres,
        List<WireId> wires,
        List<WireId> trunkWires,
        List<WireId> unmeasured,
        OptionalDouble loopOhms,
        double allowedOhms,
        int allowedNodes,
        List<WireId> untwisted,
        List<BusProblem> problems) {

    public BusWiring {
        nodes = List.copyOf(nodes);
        farthest = List.copyOf(farthest);
        wires = List.copyOf(wires);
        trunkWires = List.copyOf(trunkWires);
        unmeasured = List.copyOf(unmeasured);
        untwisted = List.copyOf(untwisted);
        problems = List.copyOf(problems);
    }

    /** The problems of a topic. */
    public List<BusProblem> problems(BusProblem.Topic topic) {
        return problems.stream().filter(each -> each.kind().topic() == topic).toList();
    }
}
