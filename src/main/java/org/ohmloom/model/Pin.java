package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A pin of a control unit.
 *
 * @param name           its name on the unit, unique there
 * @param role           what it is used as
 * @param capabilities   every role it can be set up for; always holds {@code role}
 * @param limitAmps      most continuous current, A, more than 0: of an output, a supply or a reference supply
 * @param onOhms         resistance of an output while on, ohm, more than 0
 * @param referenceVolts voltage of a reference supply above the unit's sensor return, V, more than 0
 * @param pullUpVolts    voltage a pull-up resistor goes to, above the unit's sensor return, V, more than 0
 * @param pullUpOhms     the pull-up resistor, ohm, more than 0
 * @param driver         how an output switches, if known
 * @param input          how an input reads, if known
 * @param range          what an input can tell apart, if known
 * @param uses           how it works when set up for another role, where that differs; each role once
 */
public record Pin(
        String name,
        PinRole role,
        Set<PinRole> capabilities,
        OptionalDouble limitAmps,
        OptionalDouble onOhms,
        OptionalDouble referenceVolts,
        OptionalDouble pullUpVolts,
        OptionalDouble pullUpOhms,
        Optional<Driver> driver,
        Optional<InputStage> input,
        Optional<InputRange> range,
        List<PinUse> uses) {

    public Pin {
        notBlank(name, "pin name");
        uses = List.copyOf(uses);
        List<PinRole> others = uses.stream().map(PinUse::role).toList();
        that(others.stream().distinct().count() == others.size(), "pin %s has a use twice: %s", name, others);
        that(!others.contains(role), "pin %s is a %s now; that is no other use of it", name, role);
        EnumSet<PinRole> all = EnumSet.of(role);
        all.addAll(capabilities);
        all.addAll(others);
        capabilities = Collections.unmodifiableSet(all);
        limitAmps.ifPresent(value -> positive(value, "current limit of pin %s", name));
        onOhms.ifPresent(value -> positive(value, "on-state resistance of pin %s", name));
        referenceVolts.ifPresent(value -> positive(value, "reference voltage of pin %s", name));
        pullUpVolts.ifPresent(value -> positive(value, "pull-up voltage of pin %s", name));
        pullUpOhms.ifPresent(value -> positive(value, "pull-up resistance of pin %s", name));
    }

    /** A pin that works alike in every role and of which nothing is known about what it can tell apart. */
    public Pin(
            String name,
            PinRole role,
            Set<PinRole> capabilities,
            OptionalDouble limitAmps,
            OptionalDouble onOhms,
            OptionalDouble referenceVolts,
            OptionalDouble pullUpVolts,
            OptionalDouble pullUpOhms,
            Optional<Driver> driver,
            Optional<InputStage> input) {
        this(
                name,
                role,
                capabilities,
                limitAmps,
                onOhms,
                referenceVolts,
                pullUpVolts,
                pullUpOhms,
                driver,
                input,
                Optional.empty(),
                List.of());
    }

    /** A pin of which nothing is known about how it reads. */
    public Pin(
            String name,
            PinRole role,
            Set<PinRole> capabilities,
            OptionalDouble limitAmps,
            OptionalDouble onOhms,
            OptionalDouble referenceVolts,
            OptionalDouble pullUpVolts,
            OptionalDouble pullUpOhms,
            Optional<Driver> driver) {
        this(
                name,
                role,
                capabilities,
                limitAmps,
                onOhms,
                referenceVolts,
                pullUpVolts,
                pullUpOhms,
                driver,
                Optional.empty());
    }

    /** A pin of which nothing is known about how it switches. */
    public Pin(
            String name,
            PinRole role,
            Set<PinRole> capabilities,
            OptionalDouble limitAmps,
            OptionalDouble onOhms,
            OptionalDouble referenceVolts,
            OptionalDouble pullUpVolts,
            OptionalDouble pullUpOhms) {
        this(name, role, capabilities, limitAmps, onOhms, referenceVolts, pullUpVolts, pullUpOhms, Optional.empty());
    }

    /** A pin with a role and nothing else said. */
    public static Pin of(String name, PinRole role) {
        return new Pin(
                name,
                role,
                Set.of(role),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /** A pin that works in one way. */
    public static Pin of(String name, PinUse use) {
        return with(name, use, Set.of(), List.of());
    }

    /** This pin reading in another way. */
    public Pin reading(Optional<InputStage> changed) {
        return with(
                new PinUse(role, limitAmps, onOhms, referenceVolts, pullUpVolts, pullUpOhms, driver, changed, range),
                capabilities,
                uses);
    }

    /** This pin switching in another way. */
    public Pin switching(Optional<Driver> changed) {
        return with(
                new PinUse(role, limitAmps, onOhms, referenceVolts, pullUpVolts, pullUpOhms, changed, input, range),
                capabilities,
                uses);
    }

    /** This pin with these other uses. */
    public Pin withUses(Collection<PinUse> changed) {
        return with(PinUse.now(this), capabilities, List.copyOf(changed));
    }

    /** How it works when set up for a role it can take up; as it works now where no other use says more. */
    public PinUse use(PinRole wanted) {
        return uses.stream().filter(each -> each.role() == wanted).findFirst().orElseGet(() -> PinUse.now(this)
                .as(wanted));
    }

    /**
     * This pin set up for a role it can take up; how it worked before stays among its uses.
     *
     * @throws IllegalArgumentException when it cannot
     */
    public Pin setUpAs(PinRole wanted) {
        that(capabilities.contains(wanted), "pin %s cannot be a %s; it can be %s", name, wanted, capabilities);
        if (wanted == role) {
            return this;
        }
        List<PinUse> others = new ArrayList<>(uses);
        if (others.removeIf(each -> each.role() == wanted)) {
            others.add(PinUse.now(this));
            others.sort(Comparator.comparing(PinUse::role));
        }
        return with(use(wanted), capabilities, others);
    }

    private Pin with(PinUse now, Collection<PinRole> roles, List<PinUse> others) {
        return with(name, now, roles, others);
    }

    private static Pin with(String name, PinUse now, Collection<PinRole> roles, List<PinUse> others) {
        return new Pin(
                name,
                now.role(),
                Set.copyOf(roles),
                now.limitAmps(),
                now.onOhms(),
                now.referenceVolts(),
                now.pullUpVolts(),
                now.pullUpOhms(),
                now.driver(),
                now.input(),
                now.range(),
                others);
    }
}
