package org.ohmloom.heat;

import java.util.OptionalDouble;
import org.ohmloom.units.Formats;

/**
 * What the published table and the heat balance each say a conductor may carry where it lies, and which one was designed to.
 *
 * @param tableAmps   by the table of the design basis with its factors, A; empty when it has no row for the size
 * @param tableWords  that calculation in words, with its table
 * @param balanceAmps by the heat balance at the insulation's limit, as many equal wires together fully loaded, nothing kept
 *                    in reserve, A
 * @param balanceWords that calculation in words
 * @param byBalance   whether the heat balance set the limit, and not the table
 */
public record MethodComparison(
        OptionalDouble tableAmps, String tableWords, double balanceAmps, String balanceWords, boolean byBalance) {

    /** How far the heat balance lies above (or, negative, below) the table, as a share of the table; empty without one. */
    public OptionalDouble apartFraction() {
        return tableAmps.isPresent() && tableAmps.getAsDouble() > 0
                ? OptionalDouble.of(balanceAmps / tableAmps.getAsDouble() - 1)
                : OptionalDouble.empty();
    }

    /** Whether the heat balance would allow more than the table: the unsafe side. */
    public boolean unsafeSide() {
        return apartFraction().orElse(0) > 0;
    }

    /** In words: "table 24.1 A, heat balance 22.0 A (9 % less); designed to the heat balance". */
    public String words() {
        String table = tableAmps.isPresent() ? "table " + Formats.amps(tableAmps.getAsDouble()) : "no row in the table";
        String apart = apartFraction().isPresent()
                ? " (" + Formats.percent(Math.abs(apartFraction().getAsDouble())) + (unsafeSide() ? " more)" : " less)")
                : "";
        return table + ", heat balance " + Formats.amps(balanceAmps) + apart + "; designed to the "
                + (byBalance ? "heat balance" : "table");
    }
}
