package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.that;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Where wires may lie on the physical harness: asked of wires by name, of all wires of a signal class, or of both. */
public sealed interface RoutingRule {

    /** The wires it asks something of, besides those of {@link #classes}. */
    List<WireId> wires();

    /** The signal classes whose wires it asks something of. */
    List<SignalClass> classes();

    /** Why. */
    Optional<String> reason();

    /** The same asked of other wires by name. */
    RoutingRule with(List<WireId> changed);

    /** This rule without those wires; empty when it then asks nothing of anybody. */
    default Optional<RoutingRule> without(Set<WireId> gone) {
        List<WireId> left =
                wires().stream().filter(wire -> !gone.contains(wire)).toList();
        return left.isEmpty() && classes().isEmpty() ? Optional.empty() : Optional.of(with(left));
    }

    /** Whether it asks something of a wire. */
    default boolean asks(Wire wire) {
        return wires().contains(wire.id()) || classes().contains(wire.signalClass());
    }

    /**
     * They lie in no segment of a zone.
     *
     * @param avoidZone the zone
     * @param wires     wires by name
     * @param classes   and all wires of these classes
     * @param reason    why
     */
    record AvoidZone(ZoneId avoidZone, List<WireId> wires, List<SignalClass> classes, Optional<String> reason)
            implements RoutingRule {
        public AvoidZone {
            wires = List.copyOf(wires);
            classes = List.copyOf(classes);
            check(wires, classes, reason);
        }

        @Override
        public RoutingRule with(List<WireId> changed) {
            return new AvoidZone(avoidZone, changed, classes, reason);
        }
    }

    /**
     * They share no segment with wires of other classes, which are laid first.
     *
     * @param apartFrom classes they keep away from
     * @param wires     wires by name
     * @param classes   and all wires of these classes
     * @param reason    why
     */
    record Apart(List<SignalClass> apartFrom, List<WireId> wires, List<SignalClass> classes, Optional<String> reason)
            implements RoutingRule {
        public Apart {
            apartFrom = List.copyOf(apartFrom);
            wires = List.copyOf(wires);
            classes = List.copyOf(classes);
            check(wires, classes, reason);
            that(!apartFrom.isEmpty(), "a rule to keep apart names no class to keep away from: %s", apartFrom);
            Set<SignalClass> both = new HashSet<>(classes);
            both.retainAll(apartFrom);
            that(both.isEmpty(), "a signal class cannot be kept apart from itself: %s", both);
        }

        @Override
        public RoutingRule with(List<WireId> changed) {
            return new Apart(apartFrom, changed, classes, reason);
        }
    }

    /**
     * They pass a breakout.
     *
     * @param through the breakout
     * @param wires   wires by name
     * @param classes and all wires of these classes
     * @param reason  why
     */
    record Through(BreakoutId through, List<WireId> wires, List<SignalClass> classes, Optional<String> reason)
            implements RoutingRule {
        public Through {
            wires = List.copyOf(wires);
            classes = List.copyOf(classes);
            check(wires, classes, reason);
        }

        @Override
        public RoutingRule with(List<WireId> changed) {
            return new Through(through, changed, classes, reason);
        }
    }

    private static void check(List<WireId> wires, List<SignalClass> classes, Optional<String> reason) {
        that(!wires.isEmpty() || !classes.isEmpty(), "a routing rule names neither wires nor classes: %s", wires);
        reason.ifPresent(text -> notBlank(text, "reason of a routing rule"));
    }
}
