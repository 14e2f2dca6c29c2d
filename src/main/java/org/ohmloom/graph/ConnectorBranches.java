package org.ohmloom.graph;

import java.util.Optional;
import java.util.Set;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.Harness;

/**
 * Branches of connectors: one contact from the wire side of a cavity to the terminal of the component it meets, one
 * contact between each two cavities of one name of an in-line pair.
 *
 * <p>The resistance of a contact is that of one mated pair; of an in-line pair the first connector's contact counts, or
 * the other's where the first declares none. A contact of 0 ohm, or none declared, makes the two sides one point.
 * Cavities of an in-line pair without a wire on either side are left out.
 */
final class ConnectorBranches {
    private final NetworkDraft network;
    private final Harness harness;
    private final Set<PointId> wired;
    private final MeasuredOhms measured;

    /**
     * Branches of all connectors.
     *
     * @param wired    wire sides of the cavities that hold a wire
     * @param measured measured resistances of contacts
     */
    ConnectorBranches(NetworkDraft network, Harness harness, Set<PointId> wired, MeasuredOhms measured) {
        this.network = network;
        this.harness = harness;
        this.wired = wired;
        this.measured = measured;
    }

    void add() {
        for (Connector connector : harness.connectors().all()) {
            connector.component().ifPresent(component -> connector.cavities().forEach(cavity -> cavity.terminal()
                    .ifPresent(terminal -> network.resistance(
                            connector.id() + "." + cavity.name(),
                            BranchKind.CONTACT,
                            PointName.cavity(connector.id(), cavity.name()),
                            PointName.terminal(component, terminal),
                            connector.id(),
                            measured.jointOhms(
                                    connector.id() + "." + cavity.name(),
                                    ohms(cavity.contact().flatMap(harness.contacts()::find)))))));
            connector.mate().flatMap(harness.connectors()::find).ifPresent(mate -> pair(connector, mate));
        }
    }

    /** Adds the pair when the first of the two comes by, or the other if only it names its mate. */
    private void pair(Connector connector, Connector mate) {
        boolean named = mate.mate().filter(connector.id()::equals).isPresent();
        boolean first = connector.id().compareTo(mate.id()) < 0;
        if (connector.id().equals(mate.id()) || (named && !first)) {
            return;
        }
        Connector one = first ? connector : mate;
        Connector other = first ? mate : connector;
        for (Cavity cavity : one.cavities()) {
            other.cavity(cavity.name()).ifPresent(opposite -> contact(one.id(), other.id(), cavity, opposite));
        }
    }

    private void contact(ConnectorId one, ConnectorId other, Cavity cavity, Cavity opposite) {
        PointName here = PointName.cavity(one, cavity.name());
        PointName there = PointName.cavity(other, cavity.name());
        if (wired.contains(here.id()) || wired.contains(there.id())) {
            network.resistance(
                    here.id() + "~" + there.id(),
                    BranchKind.CONTACT,
                    here,
                    there,
                    one,
                    measured.jointOhms(
                            here.id().value(),
                            measured.jointOhms(
                                    there.id().value(),
                                    ohms(cavity.contact().or(opposite::contact).flatMap(harness.contacts()::find)))));
        }
    }

    private static double ohms(Optional<ContactPart> contact) {
        return contact.map(ContactPart::contactOhms).orElse(0.0);
    }
}
