package org.ohmloom.size.protection;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.StateId;

/**
 * One protective device and all it is judged by.
 *
 * @param device       the device
 * @param type         its type
 * @param ratingAmps   rated current, A
 * @param band         its time-current band; empty when no times are published for it
 * @param rating       how far it may be loaded where it sits
 * @param loadAmps     largest lasting current through it, A RMS
 * @param loadState    the state it flows in; empty when nothing flows in any
 * @param conductors   the conductors that rely on it, the weakest first
 * @param minimumFault the smallest fault it must clear; empty when none was solved
 * @param openSeconds  by when it has opened that fault, s; empty when it may never, or no times are published
 * @param askedSeconds time in which it is asked to, s
 * @param maximumFault the largest fault it must interrupt; empty when none was solved
 * @param breakingAmps current it can interrupt, A; empty when nobody says
 * @param ratedVolts   voltage it is made for, V; empty when nobody says
 * @param systemVolts  highest system voltage there, V; empty when nothing feeds it
 * @param starts       starts of loads it must ride through
 * @param selectivity  against the devices upstream of it
 * @param checks       the verdicts, each with its numbers
 */
public record DeviceProtection(
        ComponentId device,
        String type,
        double ratingAmps,
        Optional<TimeCurrentBand> band,
        ContinuousRating rating,
        double loadAmps,
        Optional<StateId> loadState,
        List<ConductorProtection> conductors,
        Optional<Fault> minimumFault,
        OptionalDouble openSeconds,
        double askedSeconds,
        Optional<Fault> maximumFault,
        OptionalDouble breakingAmps,
        OptionalDouble ratedVolts,
        OptionalDouble systemVolts,
        List<StartPulse> starts,
        List<Selectivity> selectivity,
        List<Check> checks) {

    public DeviceProtection {
        conductors = List.copyOf(conductors);
        starts = List.copyOf(starts);
        selectivity = List.copyOf(selectivity);
        checks = List.copyOf(checks);
    }

    /** The conductor with the least reserve. */
    public Optional<ConductorProtection> weakest() {
        return conductors.stream().findFirst();
    }

    /** How a point came out, if it was looked at. */
    public Optional<Check> check(Check.Aspect aspect) {
        return checks.stream().filter(check -> check.aspect() == aspect).findFirst();
    }

    /** Whether a point was judged and not met. */
    public boolean fails(Check.Aspect aspect) {
        return check(aspect)
                .filter(found -> found.verdict() == Check.Verdict.NOT_MET)
                .isPresent();
    }
}
