package org.ohmloom.bundle.section;

import java.util.function.ToDoubleFunction;
import org.ohmloom.bundle.ConductorRows;
import org.ohmloom.graph.Routes;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.WireTables;

/**
 * What the cross-sections are made from.
 *
 * @param harness    the harness
 * @param tables     published tables
 * @param basis      id of the design basis: supports of small craft are closer
 * @param rows       conductors of the wires, those chosen for open sizes among them
 * @param routes     ways of the wires
 * @param riseKelvins how much warmer than the air a wire gets, K, 0 or more
 */
public record BundleInput(
        Harness harness,
        WireTables tables,
        String basis,
        ConductorRows rows,
        Routes routes,
        ToDoubleFunction<Wire> riseKelvins) {}
