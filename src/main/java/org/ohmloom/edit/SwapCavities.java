package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.PartId;
import org.ohmloom.words.Text;
import org.ohmloom.words.UnfitException;

/**
 * Lets the contents of two cavities of a connector change places: wires with wires, a wire with nothing, a wire with a plug.
 * Contacts stay with their cavities as {@link PutInCavity} says, and so does what a cavity meets on the other side.
 *
 * @param connector the connector
 * @param one       name of a cavity
 * @param other     name of another
 */
public record SwapCavities(ConnectorId connector, String one, String other) implements Edit {

    @Override
    public Text label() {
        return Labels.text("swap", connector + "." + one, connector + "." + other);
    }

    @Override
    public Harness apply(Harness before) {
        Connector found = before.connectors().get(connector);
        List<CavityUse> uses = CavityUse.of(before, found);
        CavityUse left = use(uses, one);
        CavityUse right = use(uses, other);
        if (one.equals(other)
                || left.ends().isEmpty()
                        && right.ends().isEmpty()
                        && left.cavity().plug().equals(right.cavity().plug())) {
            return before;
        }
        Map<EndOfWire, String> ends = new LinkedHashMap<>();
        left.ends().forEach(end -> ends.put(end, other));
        right.ends().forEach(end -> ends.put(end, one));
        Harness after = new PutInCavity(label(), connector, ends).apply(before);
        Connector changed = after.connectors().get(connector);
        for (Cavity cavity :
                plugged(changed, left.cavity().plug(), right.cavity().plug())) {
            changed = changed.withCavity(cavity);
        }
        return after.with(changed);
    }

    private List<Cavity> plugged(Connector connector, Optional<PartId> ofOne, Optional<PartId> ofOther) {
        List<Cavity> changed = new ArrayList<>();
        changed.add(PlugCavities.with(connector.cavity(one).orElseThrow(), ofOther));
        changed.add(PlugCavities.with(connector.cavity(other).orElseThrow(), ofOne));
        return changed;
    }

    private CavityUse use(List<CavityUse> uses, String name) {
        return CavityUse.named(uses, name)
                .orElseThrow(() -> new UnfitException("%s has no cavity '%s'", connector, name));
    }
}
