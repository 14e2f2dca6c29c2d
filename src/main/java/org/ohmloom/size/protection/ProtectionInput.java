package org.ohmloom.size.protection;

import java.util.List;
import java.util.SortedMap;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.Routes;
import org.ohmloom.graph.Upstream;
import org.ohmloom.heat.BundleHeat;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.run.StartUps;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.tables.WireTables;

/**
 * What the study of protection rests on.
 *
 * @param harness       the harness
 * @param tables        published tables
 * @param basis         the design basis
 * @param routes        ways of the wires
 * @param drawn         the network with nothing switched on
 * @param upstream      what stands between sources and conductors
 * @param solutions     solution of every operating state
 * @param ratings       what each wire is, carries and may carry
 * @param bundleHeat    where wires settle with their neighbours
 * @param returnDevices the device that limits a return, for wires that are returns
 * @param startUps      starts followed over time
 * @param cancelled     asked now and then; true stops the study
 */
public record ProtectionInput(
        Harness harness,
        WireTables tables,
        DesignBasis basis,
        Routes routes,
        Network drawn,
        Upstream upstream,
        SortedMap<StateId, Solution> solutions,
        SortedMap<WireId, WireRating> ratings,
        BundleHeat bundleHeat,
        Function<WireId, List<ComponentId>> returnDevices,
        StartUps startUps,
        BooleanSupplier cancelled) {}
