package org.ohmloom.tables;

import org.ohmloom.units.Gauge;

/**
 * The smallest force at which a crimp may let go of its conductor. The sets of requirements differ by up to two times for
 * one size, so a force is never told without its set.
 *
 * @param set          the set of requirements, as in "UL 486A"
 * @param gauge        size of the conductor
 * @param forceNewtons the force, N, more than 0, with its citation
 */
public record PullForce(String set, Gauge gauge, CitedValue forceNewtons) {

    /** Reads a row with the columns set, gauge and force. */
    static PullForce read(RowReader row) {
        String set = row.text("set");
        Gauge gauge = row.gauge("gauge");
        return new PullForce(
                set, gauge, new CitedValue(row.positive("force", "N"), row.citation(gauge.text(), "force")));
    }
}
