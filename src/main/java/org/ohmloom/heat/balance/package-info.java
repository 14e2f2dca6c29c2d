/**
 * The heat balance of conductors: what heat they make, how it gets away, how warm they run, how long they take.
 *
 * <p>Part of floor 3, {@code heat}. Pure physics in numbers: knows wires by their dimensions and nothing of harnesses.
 */
@NullMarked
package org.ohmloom.heat.balance;

import org.jspecify.annotations.NullMarked;
