package org.ohmloom.graph;

import java.util.Optional;
import org.ohmloom.model.Component;
import org.ohmloom.model.Device;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.tables.WireTables;

/**
 * Makes the electrical multigraph of a harness in one operating state.
 *
 * <p>Places are the components' terminals, the wire sides of cavities, splices, ground points and the bodies under them,
 * the middles of chassis bodies, and loose wire ends. Everything with resistance between two places is a branch; where
 * there is none (a contact or joint of 0 ohm, or none declared) the places are one point, named after the most telling
 * of them: a component's terminal before a cavity, a splice, a chassis body, a ground point; among equals the first in natural
 * order. {@link Network#index()} leads from any place to its point. Branches keep their identity over all states; what
 * is off is {@link Law.Open}. What the harness leaves open is filled by stated assumptions, see
 * {@link Network#assumptions()}. A measured resistance of a joint takes the place of the one it was entered with
 * ({@link MeasuredOhms}).
 *
 * <p>Parts of the rules: {@link ConnectorBranches}, {@link WireBranches}, {@link GroundBranches},
 * {@link ChassisBranches}, {@link SourceBranches}, {@link SwitchingBranches}, {@link ProtectiveBranches},
 * {@link LoadBranches}, {@link LoadLaws}, {@link InductiveLaws}, {@link DriverBranches}, {@link ControlUnitBranches}, {@link ReferenceBranches}, {@link BusBarBranches}.
 */
public final class NetworkBuilder {

    private NetworkBuilder() {}

    /** The network of a harness in an operating state, with the fuses and batteries of the tables. */
    public static Network build(Harness harness, OperatingState state, ConductorOhms ohms, WireTables tables) {
        return build(harness, state, ohms, FuseOhms.of(tables), SourceConditions.of(harness, tables));
    }

    /**
     * The network of a harness in an operating state, with batteries as if they had no model.
     *
     * @param harness  the harness
     * @param state    how it is used
     * @param ohms     resistance of each wire
     * @param fuseOhms typical resistance of protective devices that were not measured
     */
    public static Network build(Harness harness, OperatingState state, ConductorOhms ohms, FuseOhms fuseOhms) {
        return build(harness, state, ohms, fuseOhms, new SourceConditions(harness, type -> Optional.empty()));
    }

    private static Network build(
            Harness harness, OperatingState state, ConductorOhms ohms, FuseOhms fuseOhms, SourceConditions conditions) {
        NetworkDraft network = new NetworkDraft(state);
        Optional<Component> source = firstSource(harness);
        for (Component component : harness.components().all()) {
            DeviceBranches.add(network, component, fuseOhms, conditions);
        }
        MeasuredOhms measured = MeasuredOhms.of(harness);
        WireBranches wires = new WireBranches(network, harness, ohms, measured);
        wires.add(source);
        new ConnectorBranches(network, harness, wires.arrivals(), measured).add();
        new GroundBranches(network, harness, measured).add();
        new ChassisBranches(network, harness).add();
        Network finished = network.finish(source.map(component -> PointName.terminal(component.id(), Device.NEGATIVE)));
        return InductiveLaws.settle(finished.watching(WatchedPoints.of(finished, harness)), harness);
    }

    /**
     * The source whose negative terminal is the datum: the first in the order of identities, whether it is on or off;
     * empty when the harness has none.
     */
    public static Optional<Component> firstSource(Harness harness) {
        return harness.components().all().stream()
                .filter(component -> component.device().isSource())
                .findFirst();
    }
}
