package org.ohmloom.edit;

import org.ohmloom.model.Harness;
import org.ohmloom.model.WiringRules;
import org.ohmloom.words.Text;

/**
 * Asks something else of the wires and pins that are made from a list of sensors and units.
 *
 * @param label what that changes
 * @param rules the rules from now on
 */
public record ChangeWiringRules(Text label, WiringRules rules) implements Edit {

    @Override
    public Harness apply(Harness before) {
        return before.rules().wiringRules().equals(rules)
                ? before
                : before.withRules(before.rules().withWiring(rules));
    }
}
