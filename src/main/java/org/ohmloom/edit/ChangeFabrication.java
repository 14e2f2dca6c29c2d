package org.ohmloom.edit;

import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.Harness;
import org.ohmloom.words.Text;

/**
 * Asks something else of how the harness is made.
 *
 * @param label what that changes
 * @param rules the rules from now on
 */
public record ChangeFabrication(Text label, FabricationRules rules) implements Edit {

    @Override
    public Harness apply(Harness before) {
        return before.rules().fabricationRules().equals(rules)
                ? before
                : before.withRules(before.rules().withFabrication(rules));
    }
}
