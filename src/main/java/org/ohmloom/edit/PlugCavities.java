package org.ohmloom.edit;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.PartId;
import org.ohmloom.words.Text;

/**
 * Puts plugs into cavities of a connector, or takes them out.
 *
 * @param connector the connector
 * @param cavities  names of the cavities
 * @param plug      the plug, entry of the parts list; empty takes out what is there
 */
public record PlugCavities(ConnectorId connector, List<String> cavities, Optional<PartId> plug) implements Edit {

    public PlugCavities {
        cavities = List.copyOf(cavities);
    }

    /** Plugs every cavity without a wire. */
    public static PlugCavities unused(Harness harness, ConnectorId connector, PartId plug) {
        List<String> free = CavityUse.of(harness, harness.connectors().get(connector)).stream()
                .filter(CavityUse::isFree)
                .map(use -> use.cavity().name())
                .toList();
        return new PlugCavities(connector, free, Optional.of(plug));
    }

    static Cavity with(Cavity cavity, Optional<PartId> plug) {
        return new Cavity(cavity.name(), cavity.terminal(), cavity.contact(), plug, cavity.doubleCrimp());
    }

    @Override
    public Text label() {
        Text where = cavities.size() == 1
                ? Text.of(connector + "." + cavities.get(0))
                : Labels.text("cavities", cavities.size(), connector);
        return Labels.text(plug.isPresent() ? "plug" : "take-plug-out", where);
    }

    @Override
    public Harness apply(Harness before) {
        Connector changed = before.connectors().get(connector);
        for (String name : cavities) {
            Optional<Cavity> cavity = changed.cavity(name);
            if (cavity.isPresent()) {
                changed = changed.withCavity(with(cavity.get(), plug));
            }
        }
        return before.with(changed);
    }
}
