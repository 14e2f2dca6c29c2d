package org.ohmloom.model;

import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A kind of contact: the crimped terminal that sits in a cavity.
 *
 * @param id               identity in this harness
 * @param part             entry of the parts list
 * @param contactOhms      resistance of one mated pair with its crimp, ohm, 0 or more
 * @param limits           continuous current limits by ambient temperature, coolest first; may be empty when unknown
 * @param conductorMinMm2  smallest conductor its crimp takes, mm2, more than 0
 * @param conductorMaxMm2  largest conductor its crimp takes, mm2, at least the smallest
 * @param insulationMinMm  smallest insulation diameter, mm, 0 or more
 * @param insulationMaxMm  largest insulation diameter, mm, at least the smallest
 * @param doubleCrimps     pairs of conductors that may share the crimp
 * @param stripLengthMm    length to strip, mm, more than 0
 * @param plating          plating in words, for example {@code Sn} or {@code Au}
 * @param seal             single-wire seal, if it takes one
 * @param tool             crimping tool, entry of the parts list
 * @param ratedVolts       highest system voltage it is made for, V, more than 0, if known
 */
public record ContactPart(
        ContactId id,
        Optional<PartId> part,
        double contactOhms,
        List<ContactLimit> limits,
        double conductorMinMm2,
        double conductorMaxMm2,
        double insulationMinMm,
        double insulationMaxMm,
        List<DoubleCrimp> doubleCrimps,
        double stripLengthMm,
        String plating,
        Optional<Seal> seal,
        Optional<PartId> tool,
        OptionalDouble ratedVolts)
        implements Element {

    public ContactPart {
        notNegative(contactOhms, "resistance of contact %s", id);
        limits = List.copyOf(limits);
        for (int k = 1; k < limits.size(); k++) {
            that(
                    limits.get(k - 1).ambientCelsius() < limits.get(k).ambientCelsius(),
                    "current limits of contact %s must come coolest first",
                    id);
        }
        positive(conductorMinMm2, "smallest conductor of contact %s", id);
        that(
                conductorMaxMm2 >= conductorMinMm2 && Double.isFinite(conductorMaxMm2),
                "largest conductor of contact %s, %s mm2, is below the smallest, %s mm2",
                id,
                conductorMaxMm2,
                conductorMinMm2);
        notNegative(insulationMinMm, "smallest insulation of contact %s", id);
        that(
                insulationMaxMm >= insulationMinMm && Double.isFinite(insulationMaxMm),
                "largest insulation of contact %s, %s mm, is below the smallest, %s mm",
                id,
                insulationMaxMm,
                insulationMinMm);
        doubleCrimps = List.copyOf(doubleCrimps);
        positive(stripLengthMm, "strip length of contact %s", id);
        ratedVolts.ifPresent(value -> positive(value, "voltage rating of contact %s", id));
    }

    /** A contact whose voltage rating is not known. */
    public ContactPart(
            ContactId id,
            Optional<PartId> part,
            double contactOhms,
            List<ContactLimit> limits,
            double conductorMinMm2,
            double conductorMaxMm2,
            double insulationMinMm,
            double insulationMaxMm,
            List<DoubleCrimp> doubleCrimps,
            double stripLengthMm,
            String plating,
            Optional<Seal> seal,
            Optional<PartId> tool) {
        this(
                id,
                part,
                contactOhms,
                limits,
                conductorMinMm2,
                conductorMaxMm2,
                insulationMinMm,
                insulationMaxMm,
                doubleCrimps,
                stripLengthMm,
                plating,
                seal,
                tool,
                OptionalDouble.empty());
    }
}
