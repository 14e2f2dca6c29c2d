package org.ohmloom.analysis;

import org.ohmloom.bundle.ConductorRows;
import org.ohmloom.bundle.length.CutLengths;
import org.ohmloom.graph.Routes;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.model.Harness;
import org.ohmloom.tables.WireTables;

/**
 * The ways of the wires of a harness, and how long each is cut.
 *
 * @param routes  ways of the wires; the length of a wire there is its cut length
 * @param lengths cut lengths of the wires, part by part
 */
public record LaidWires(Routes routes, CutLengths lengths) {

    /**
     * Lays the wires of a harness.
     *
     * @throws AnalysisRefusedException when the design basis is not in the tables
     */
    public static LaidWires of(Harness harness, WireTables tables) {
        return of(harness, tables, new ConductorResistance(tables, KnownNames.basis(harness, tables)));
    }

    static LaidWires of(Harness harness, WireTables tables, ConductorResistance resistance) {
        ConductorRows entered = wire -> wire.gauge().map(gauge -> resistance.row(wire, gauge));
        Routes ways = Routes.of(harness);
        CutLengths lengths = CutLengths.of(harness, tables, entered, ways);
        return new LaidWires(ways.withConductorMetres(lengths.metres()), lengths);
    }
}
