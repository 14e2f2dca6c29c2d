package org.ohmloom.edit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ContactId;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.words.Text;
import org.ohmloom.words.UnfitException;

/**
 * Puts ends of wires into cavities of a connector. A plug there comes out. Contacts stay with their cavities, which they are
 * chosen for; a cavity without one takes the kind of the cavity the end comes from. Lengths and measured resistances of the
 * wires stay: it is the same copper.
 *
 * @param label     what that does
 * @param connector the connector
 * @param ends      the cavity of each end, by name
 */
public record PutInCavity(Text label, ConnectorId connector, Map<EndOfWire, String> ends) implements Edit {

    public PutInCavity {
        ends = Map.copyOf(ends);
    }

    /** Puts one end into a cavity. */
    public static PutInCavity one(EndOfWire end, ConnectorId connector, String cavity) {
        return new PutInCavity(
                Labels.text("put-into", end.wire(), connector + "." + cavity), connector, Map.of(end, cavity));
    }

    @Override
    public Harness apply(Harness before) {
        Connector changed = before.connectors().get(connector);
        Harness after = before;
        for (Map.Entry<EndOfWire, String> entry : ends.entrySet()) {
            WireEnd place = new WireEnd.AtCavity(connector, entry.getValue());
            WireEnd was = entry.getKey().place(before);
            if (was.equals(place)) {
                continue;
            }
            WireId id = entry.getKey().wire();
            Wire wire = after.wires().get(id);
            after = after.with(entry.getKey().joined(wire, place));
            changed = taking(changed, entry.getValue(), contact(before, was));
        }
        return after == before ? before : after.withAll(List.<Element>of(changed));
    }

    private static Optional<ContactId> contact(Harness harness, WireEnd end) {
        return end instanceof WireEnd.AtCavity at
                ? harness.connectors().get(at.connector()).cavity(at.cavity()).flatMap(Cavity::contact)
                : Optional.empty();
    }

    private static Connector taking(Connector connector, String name, Optional<ContactId> brought) {
        Cavity now = connector
                .cavity(name)
                .orElseThrow(() -> new UnfitException("%s has no cavity '%s'", connector.id(), name));
        return connector.withCavity(
                new Cavity(name, now.terminal(), now.contact().or(() -> brought), Optional.empty(), now.doubleCrimp()));
    }
}
