package org.ohmloom.edit;

import java.util.List;
import java.util.Set;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.words.Text;

/**
 * Takes wires out of the harness.
 *
 * @param wires the wires; routing rules forget them; nothing else may refer to them
 */
public record RemoveWires(List<WireId> wires) implements Edit {

    public RemoveWires {
        wires = List.copyOf(wires);
    }

    @Override
    public Text label() {
        return Labels.text("remove", Labels.subjects(wires, "wires"));
    }

    @Override
    public Harness apply(Harness before) {
        FabricationRules rules = before.rules().fabricationRules();
        Set<WireId> gone = Set.copyOf(wires);
        boolean named =
                rules.routing().stream().anyMatch(rule -> rule.wires().stream().anyMatch(gone::contains));
        Harness free = named ? before.withRules(before.rules().withFabrication(rules.without(gone))) : before;
        return free.withoutAll(wires);
    }
}
