package org.ohmloom.size.protection;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ElectronicLimit;
import org.ohmloom.model.WireId;
import org.ohmloom.words.Text;

/**
 * An output with an electronic limit as a protective device.
 *
 * <p>Into a fault it gives its limit and no more, opens after its trip time, and where it tries again by itself the fault heats
 * the conductors like a current of limit x sqrt(trip / (trip + retry)), with the rise of one pulse on top.
 *
 * @param component    the component the output belongs to
 * @param output       the output in words
 * @param limit        its limit
 * @param heatingAmps  RMS current of a lasting fault, A: the limit when it never trips, 0 when it stays open
 * @param faultAmps    smallest fault behind it if it did not limit, A; empty when none was solved
 * @param conductors   the conductors behind it, the weakest first
 * @param blindDevices fuses behind it that its limit cannot open in the time asked, or before it trips
 * @param told         how it was worked out
 */
public record OutputProtection(
        ComponentId component,
        String output,
        ElectronicLimit limit,
        double heatingAmps,
        OptionalDouble faultAmps,
        List<Conductor> conductors,
        List<ComponentId> blindDevices,
        Text told) {

    public OutputProtection {
        conductors = List.copyOf(conductors);
        blindDevices = List.copyOf(blindDevices);
    }

    /**
     * A conductor behind the output.
     *
     * @param wire        the wire
     * @param limit       what it stands
     * @param hottestCelsius conductor temperature in a lasting fault, deg C; infinite when it does not settle
     * @param stands      whether it stays within its continuous limit on average and its overload limit in each pulse
     */
    public record Conductor(WireId wire, ConductorLimit limit, double hottestCelsius, boolean stands) {}

    /** The first conductor that does not stand it. */
    public Optional<Conductor> burnt() {
        return conductors.stream().filter(each -> !each.stands()).findFirst();
    }

    /** Current a fault draws through it, A: capped at its limit. */
    public double cappedAmps() {
        return Math.min(limit.limitAmps(), faultAmps.orElse(limit.limitAmps()));
    }
}
