package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
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
        Optional<InputStage> input) {

    public Pin {
        notBlank(name, "pin name");
        EnumSet<PinRole> all = EnumSet.of(role);
        all.addAll(capabilities);
        capabilities = Collections.unmodifiableSet(all);
        limitAmps.ifPresent(value -> positive(value, "current limit of pin " + name));
        onOhms.ifPresent(value -> positive(value, "on-state resistance of pin " + name));
        referenceVolts.ifPresent(value -> positive(value, "reference voltage of pin " + name));
        pullUpVolts.ifPresent(value -> positive(value, "pull-up voltage of pin " + name));
        pullUpOhms.ifPresent(value -> positive(value, "pull-up resistance of pin " + name));
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

    /** This pin able to take up other roles too. */
    public Pin capableOf(Collection<PinRole> roles) {
        return new Pin(
                name,
                role,
                Set.copyOf(roles),
                limitAmps,
                onOhms,
                referenceVolts,
                pullUpVolts,
                pullUpOhms,
                driver,
                input);
    }

    /** This pin reading in another way. */
    public Pin reading(Optional<InputStage> changed) {
        return new Pin(
                name, role, capabilities, limitAmps, onOhms, referenceVolts, pullUpVolts, pullUpOhms, driver, changed);
    }
}
