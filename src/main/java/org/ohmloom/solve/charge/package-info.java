/**
 * DC network solution for an operating state, here seen from the batteries: charge balance of a state, timed sequences of
 * states, and the load analysis of the alternators.
 *
 * <p>Floor 3, part of {@code solve}. Everything is worked out from published solutions and from what {@code graph} says
 * a battery or an alternator is in a state.
 */
@NullMarked
package org.ohmloom.solve.charge;

import org.jspecify.annotations.NullMarked;
