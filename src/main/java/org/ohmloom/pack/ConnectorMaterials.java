package org.ohmloom.pack;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Seal;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.words.Text;

/**
 * What connectors take: housing, lock, backshell; a contact and its seal for each cavity in use; a plug for each unused
 * one. Of a connector already in the vehicle only the contacts of new wires count.
 */
final class ConnectorMaterials {
    private final Harness harness;
    private final Map<String, List<Wire>> wiresByEnd;
    private final Materials materials;

    ConnectorMaterials(Harness harness, Map<String, List<Wire>> wiresByEnd, Materials materials) {
        this.harness = harness;
        this.wiresByEnd = wiresByEnd;
        this.materials = materials;
    }

    void collect() {
        for (Connector connector : harness.connectors().all()) {
            if (!connector.existing()) {
                housing(connector);
            }
            for (Cavity cavity : connector.cavities()) {
                WireEnd end = new WireEnd.AtCavity(connector.id(), cavity.name());
                List<Wire> wires = wiresByEnd.getOrDefault(end.text(), List.of());
                boolean madeNow = !connector.existing() || wires.stream().anyMatch(wire -> !wire.existing());
                if (!wires.isEmpty() && madeNow) {
                    contact(connector, cavity, end.text());
                } else if (wires.isEmpty() && !connector.existing()) {
                    plug(connector, cavity, end.text());
                }
            }
        }
    }

    private void housing(Connector connector) {
        String id = connector.id().value();
        Optional<AssemblyId> assembly = connector.assembly();
        Text words = MaterialTexts.text(
                "housing", String.valueOf(connector.cavities().size()));
        materials.piece(Material.piece(assembly, MaterialKind.HOUSING, connector.part(), words), id);
        connector
                .lock()
                .ifPresent(part -> materials.piece(
                        Material.piece(assembly, MaterialKind.HOUSING, Optional.of(part), Text.NONE), id));
        connector
                .backshell()
                .ifPresent(part -> materials.piece(
                        Material.piece(assembly, MaterialKind.HOUSING, Optional.of(part), Text.NONE), id));
    }

    private void contact(Connector connector, Cavity cavity, String designator) {
        Optional<ContactPart> contact = cavity.contact().map(harness.contacts()::get);
        Text words = contact.map(kind -> MaterialTexts.text("contact-of", kind.id()))
                .orElseGet(() -> MaterialTexts.text("contact"));
        materials.piece(
                Material.piece(connector.assembly(), MaterialKind.CONTACT, contact.flatMap(ContactPart::part), words),
                designator);
        contact.flatMap(ContactPart::seal)
                .map(Seal::part)
                .ifPresent(seal -> materials.piece(
                        Material.piece(connector.assembly(), MaterialKind.SEAL, Optional.of(seal), Text.NONE),
                        designator));
    }

    /** An open cavity counts only where others of the connector are sealed: it lets water in. */
    private void plug(Connector connector, Cavity cavity, String designator) {
        if (cavity.plug().isPresent() || isSealed(connector)) {
            materials.piece(
                    Material.piece(connector.assembly(), MaterialKind.PLUG, cavity.plug(), MaterialTexts.text("plug")),
                    designator);
        }
    }

    private boolean isSealed(Connector connector) {
        return connector.cavities().stream()
                .anyMatch(cavity -> cavity.plug().isPresent()
                        || cavity.contact()
                                .map(harness.contacts()::get)
                                .flatMap(ContactPart::seal)
                                .isPresent());
    }
}
