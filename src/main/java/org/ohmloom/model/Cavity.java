package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;

import java.util.Optional;

/**
 * A place for one contact in a connector.
 *
 * @param name        name moulded beside it, unique in the connector
 * @param terminal    terminal of the component that it meets; empty on in-line connectors and unused cavities
 * @param contact     the contact crimped for it
 * @param plug        cavity plug, entry of the parts list, for an unused cavity
 * @param doubleCrimp whether two wires in one contact are meant here
 */
public record Cavity(
        String name,
        Optional<String> terminal,
        Optional<ContactId> contact,
        Optional<PartId> plug,
        boolean doubleCrimp) {

    public Cavity {
        notBlank(name, "cavity name");
        terminal.ifPresent(value -> notBlank(value, "terminal of cavity %s", name));
    }

    /** A cavity that meets a component's terminal with a kind of contact. */
    public static Cavity of(String name, String terminal, String contact) {
        return new Cavity(name, Optional.of(terminal), Optional.of(new ContactId(contact)), Optional.empty(), false);
    }
}
