package org.ohmloom.analysis;

/**
 * Sums over the wires to be made, existing ones left out.
 *
 * @param wires         count of wires to be made
 * @param lengthMetres  length of all of them, m, as far as known
 * @param copperKg      copper in them, kg, as far as known
 * @param connectors    count of connectors to be fitted
 * @param worstDropVolts largest on-state drop of any load in any state that asks it on, V
 */
public record Totals(int wires, double lengthMetres, double copperKg, int connectors, double worstDropVolts) {}
