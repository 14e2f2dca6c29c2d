package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.RoutingRule;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.words.Text;

/**
 * Replaces the routing rules of a harness.
 *
 * @param label   what that does
 * @param routing the rules from now on
 */
public record ChangeRouting(Text label, List<RoutingRule> routing) implements Edit {

    public ChangeRouting {
        routing = List.copyOf(routing);
    }

    /** Lets one wire off all routing rules; rules on its class then name the other wires of the class instead. */
    public static ChangeRouting lettingOff(Harness harness, Wire wire) {
        List<RoutingRule> left = new ArrayList<>();
        for (RoutingRule rule : harness.rules().fabricationRules().routing()) {
            if (rule.asks(wire)) {
                named(harness, rule, wire.signalClass())
                        .without(Set.of(wire.id()))
                        .ifPresent(left::add);
            } else {
                left.add(rule);
            }
        }
        return new ChangeRouting(Labels.text("let-off", wire.id()), left);
    }

    /** The rule with all wires of a class named one by one. */
    private static RoutingRule named(Harness harness, RoutingRule rule, SignalClass signal) {
        if (!rule.classes().contains(signal)) {
            return rule;
        }
        List<WireId> wires = new ArrayList<>(rule.wires());
        harness.wires().all().stream()
                .filter(each -> each.signalClass() == signal && !rule.wires().contains(each.id()))
                .forEach(each -> wires.add(each.id()));
        List<SignalClass> classes =
                rule.classes().stream().filter(each -> each != signal).toList();
        if (rule instanceof RoutingRule.AvoidZone avoid) {
            return new RoutingRule.AvoidZone(avoid.avoidZone(), wires, classes, avoid.reason());
        }
        if (rule instanceof RoutingRule.Through through) {
            return new RoutingRule.Through(through.through(), wires, classes, through.reason());
        }
        RoutingRule.Apart apart = (RoutingRule.Apart) rule;
        return new RoutingRule.Apart(apart.apartFrom(), wires, classes, apart.reason());
    }

    @Override
    public Harness apply(Harness before) {
        FabricationRules now = before.rules().fabricationRules();
        return now.routing().equals(routing)
                ? before
                : before.withRules(before.rules().withFabrication(now.withRouting(routing)));
    }
}
