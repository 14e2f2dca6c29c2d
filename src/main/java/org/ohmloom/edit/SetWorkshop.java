package org.ohmloom.edit;

import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.Harness;
import org.ohmloom.words.Text;

/**
 * Sets what a harness asks of the shop.
 *
 * @param label            what that does
 * @param workmanshipClass class of workmanship, 1 to 3; empty where none is asked for
 * @param wasteFraction    share of wire and covering bought beyond what is used, 0 to 1; empty takes the usual one
 * @param currency         currency of the prices; empty where none is named
 */
public record SetWorkshop(
        Text label, Optional<Integer> workmanshipClass, OptionalDouble wasteFraction, Optional<String> currency)
        implements Edit {

    @Override
    public Harness apply(Harness before) {
        FabricationRules now = before.rules().fabricationRules();
        FabricationRules then = now.withWorkshop(workmanshipClass, wasteFraction, currency);
        return then.equals(now) ? before : before.withRules(before.rules().withFabrication(then));
    }
}
