package org.ohmloom.size;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.ohmloom.model.ComponentId;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.words.Text;

/**
 * A requirement that can be put to any size.
 *
 * @param requirement the smallest size that meets it, and why
 * @param fits        whether a size meets it
 */
record Demand(Requirement requirement, Predicate<ConductorRow> fits) {

    /** A requirement met by the smallest size, whatever it is; its reason is a text without gaps. */
    static Demand none(Governor governor, ConductorFamily family, String key) {
        ConductorRow first = family.rows().get(0);
        return met(governor, first, SizeTexts.text(key), first.citation(), row -> true);
    }

    /** A requirement met from that size on. */
    static Demand met(
            Governor governor, ConductorRow row, Text reason, Citation citation, Predicate<ConductorRow> fits) {
        return new Demand(
                new Requirement(governor, Optional.of(row.gauge()), row.copperAreaMm2(), reason, citation, List.of()),
                fits);
    }

    /** A requirement no size meets. */
    static Demand unmet(Governor governor, Text reason, Citation citation) {
        return new Demand(new Requirement(governor, Optional.empty(), 0, reason, citation, List.of()), row -> false);
    }

    /** This requirement, said to come from those protective devices. */
    Demand from(List<ComponentId> devices) {
        return new Demand(
                new Requirement(
                        requirement.governor(),
                        requirement.smallest(),
                        requirement.areaMm2(),
                        requirement.why(),
                        requirement.citation(),
                        devices),
                fits);
    }

    /** The smallest size of a family that meets a condition. */
    static Optional<ConductorRow> smallest(ConductorFamily family, Predicate<ConductorRow> fits) {
        return family.rows().stream().filter(fits).findFirst();
    }

    /** The largest size of a family. */
    static ConductorRow largest(ConductorFamily family) {
        return family.rows().get(family.rows().size() - 1);
    }
}
