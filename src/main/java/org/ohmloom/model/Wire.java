package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.units.Gauge;

/**
 * A wire from one end to another. A shield or its drain wire is a wire of class {@link SignalClass#SHIELD} in a cable.
 *
 * @param id           identity
 * @param from         one end
 * @param to           the other end
 * @param gauge        conductor size; empty means "to be chosen"
 * @param family       conductor family of the tables (its listed resistance); empty means the design basis's own
 * @param insulation   insulation type of the tables; empty means the design rules' own
 * @param colour       insulation colour
 * @param lengthMetres length as cut, m, more than 0; empty means its way and the allowances of each end
 * @param signalClass  what it carries
 * @param circuit      name of its circuit, if given
 * @param cable        the multicore cable or twisted pair it is a core of
 * @param measuredOhms measured or estimated end-to-end resistance, ohm, more than 0; overrides the table
 * @param presentAmps  current it carries already for equipment that is not modelled, A, 0 or more, from to to
 * @param existing     already in the vehicle: not in the cut list or the bill of materials
 * @param assembly     the assembly it belongs to
 * @param locked       its size stays whatever the choice of conductors finds
 */
public record Wire(
        WireId id,
        WireEnd from,
        WireEnd to,
        Optional<Gauge> gauge,
        Optional<String> family,
        Optional<String> insulation,
        Optional<WireColour> colour,
        OptionalDouble lengthMetres,
        SignalClass signalClass,
        Optional<String> circuit,
        Optional<CableId> cable,
        OptionalDouble measuredOhms,
        OptionalDouble presentAmps,
        boolean existing,
        Optional<AssemblyId> assembly,
        boolean locked)
        implements Element, Assembled {

    public Wire {
        family.ifPresent(value -> notBlank(value, "conductor family of wire %s", id));
        insulation.ifPresent(value -> notBlank(value, "insulation type of wire %s", id));
        circuit.ifPresent(value -> notBlank(value, "circuit of wire %s", id));
        lengthMetres.ifPresent(value -> positive(value, "length of wire %s", id));
        measuredOhms.ifPresent(value -> positive(value, "measured resistance of wire %s", id));
        presentAmps.ifPresent(value -> notNegative(value, "present current of wire %s", id));
    }

    /** A wire whose size may be chosen. */
    public Wire(
            WireId id,
            WireEnd from,
            WireEnd to,
            Optional<Gauge> gauge,
            Optional<String> family,
            Optional<String> insulation,
            Optional<WireColour> colour,
            OptionalDouble lengthMetres,
            SignalClass signalClass,
            Optional<String> circuit,
            Optional<CableId> cable,
            OptionalDouble measuredOhms,
            OptionalDouble presentAmps,
            boolean existing,
            Optional<AssemblyId> assembly) {
        this(
                id,
                from,
                to,
                gauge,
                family,
                insulation,
                colour,
                lengthMetres,
                signalClass,
                circuit,
                cable,
                measuredOhms,
                presentAmps,
                existing,
                assembly,
                false);
    }

    /** A wire of a size and a length between two ends, everything else left open. */
    public static Wire of(String id, WireEnd from, WireEnd to, SignalClass signalClass) {
        return new Wire(
                new WireId(id),
                from,
                to,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                signalClass,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                false,
                Optional.empty(),
                false);
    }

    /** Its two ends, {@code from} first. */
    public List<WireEnd> ends() {
        return List.of(from, to);
    }

    /** This wire with another conductor size; a measured resistance belongs to the old one and goes. */
    public Wire withGauge(Optional<Gauge> changed) {
        return changed.equals(gauge)
                ? this
                : with(from, to, changed, colour, lengthMetres, cable, OptionalDouble.empty());
    }

    /** This wire with another length; empty takes its way and the allowances of each end. */
    public Wire withLengthMetres(OptionalDouble changed) {
        return with(from, to, gauge, colour, changed, cable, measuredOhms);
    }

    /** This wire with other ends. */
    public Wire withEnds(WireEnd changedFrom, WireEnd changedTo) {
        return with(changedFrom, changedTo, gauge, colour, lengthMetres, cable, measuredOhms);
    }

    /** This wire without a measured resistance: what holds for another wire of its size and length. */
    public Wire unmeasured() {
        return with(from, to, gauge, colour, lengthMetres, cable, OptionalDouble.empty());
    }

    /** This wire as a core of another cable, or of none. */
    public Wire inCable(Optional<CableId> changed) {
        return with(from, to, gauge, colour, lengthMetres, changed, measuredOhms);
    }

    /** This wire of another colour; empty for none said. */
    public Wire withColour(Optional<WireColour> changed) {
        return with(from, to, gauge, changed, lengthMetres, cable, measuredOhms);
    }

    private Wire with(
            WireEnd itsFrom,
            WireEnd itsTo,
            Optional<Gauge> itsGauge,
            Optional<WireColour> itsColour,
            OptionalDouble itsLengthMetres,
            Optional<CableId> itsCable,
            OptionalDouble itsMeasuredOhms) {
        return new Wire(
                id,
                itsFrom,
                itsTo,
                itsGauge,
                family,
                insulation,
                itsColour,
                itsLengthMetres,
                signalClass,
                circuit,
                itsCable,
                itsMeasuredOhms,
                presentAmps,
                existing,
                assembly,
                locked);
    }
}
