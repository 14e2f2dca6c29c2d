package org.ohmloom.size;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;

/**
 * The smallest conductor that satisfies every requirement on a wire, and why.
 *
 * @param wire         the wire
 * @param gauge        chosen size; empty when no size of the family satisfies all
 * @param governing    the requirement that asks for the largest size
 * @param requirements all requirements in the order of {@link Governor}
 */
public record ConductorChoice(
        WireId wire, Optional<Gauge> gauge, Requirement governing, List<Requirement> requirements) {

    public ConductorChoice {
        requirements = List.copyOf(requirements);
    }
}
