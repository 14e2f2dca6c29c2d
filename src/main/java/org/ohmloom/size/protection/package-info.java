/**
 * Choice of conductor and protective device, and why: whether each protective device carries, rides through, protects and
 * clears what it should.
 *
 * <p>Floor 4, part of {@code size}. Times are read from published bands and never between two rows; fault currents come from
 * the solver, with the fault as one more branch of the real network.
 */
@NullMarked
package org.ohmloom.size.protection;

import org.jspecify.annotations.NullMarked;
