package org.ohmloom.model;

import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.units.Gauge;

/**
 * What is asked of wires and pins that are made from a list of sensors and units.
 *
 * @param colours     colours of wires by what they carry, each signal class once; those left out take the usual ones
 * @param signalGauge size of the wires made; empty leaves it to the choice of sizes
 * @param sparePins   pins that a plan must leave free, each role once
 */
public record WiringRules(List<Colours> colours, Optional<Gauge> signalGauge, List<SparePins> sparePins) {

    /** Nothing asked. */
    public static final WiringRules NONE = new WiringRules(List.of(), Optional.empty(), List.of());

    /**
     * Colours for what a wire carries, the first that is free taken first.
     *
     * @param signalClass what it carries
     * @param choices     colours in the order they are taken, at least one
     */
    public record Colours(SignalClass signalClass, List<WireColour> choices) {
        public Colours {
            choices = List.copyOf(choices);
            that(!choices.isEmpty(), "no colour is given for %s", signalClass);
        }
    }

    /**
     * Pins kept free.
     *
     * @param role what each of them must be able to be
     * @param pins how many, 1 or more
     */
    public record SparePins(PinRole role, int pins) {
        public SparePins {
            positive(pins, "count of spare pins");
        }
    }

    public WiringRules {
        colours = List.copyOf(colours);
        sparePins = List.copyOf(sparePins);
        Set<SignalClass> classes = EnumSet.noneOf(SignalClass.class);
        colours.forEach(
                each -> that(classes.add(each.signalClass()), "colours of %s are given twice", each.signalClass()));
        Set<PinRole> roles = EnumSet.noneOf(PinRole.class);
        sparePins.forEach(each -> that(roles.add(each.role()), "spare pins of role %s are given twice", each.role()));
    }
}
