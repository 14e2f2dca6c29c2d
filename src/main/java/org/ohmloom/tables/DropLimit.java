package org.ohmloom.tables;

import java.util.OptionalDouble;
import org.ohmloom.words.Refusals;

/**
 * One allowed voltage drop.
 *
 * @param use          what kind of load, as in "continuous", "intermittent" or "critical"
 * @param systemVolts  the system voltage it is listed for, V; empty for any
 * @param dropVolts    the drop allowed, V; empty when it is a share of the voltage
 * @param dropFraction the share of the nominal voltage allowed, above 0; empty when it is in volts
 * @param citation     where it comes from
 */
public record DropLimit(
        String use,
        OptionalDouble systemVolts,
        OptionalDouble dropVolts,
        OptionalDouble dropFraction,
        Citation citation) {

    /** Reads a row with the columns use, and systemVolts with dropVolts, or dropPercent. */
    static DropLimit read(RowReader row) {
        OptionalDouble system = row.optionalPositive("systemVolts", "V");
        OptionalDouble volts = row.optionalPositive("dropVolts", "V");
        OptionalDouble share = row.optionalPositive("dropPercent", "1");
        if (volts.isPresent() == share.isPresent()) {
            throw row.unfit(
                    "dropVolts",
                    Refusals.text("the row needs either dropVolts or dropPercent; fill in exactly one of the two"));
        }
        String use = row.text("use");
        String text = system.isPresent() ? row.text("systemVolts") + " V " + use : use;
        return new DropLimit(
                use, system, volts, share, row.citation(text, volts.isPresent() ? "dropVolts" : "dropPercent"));
    }
}
