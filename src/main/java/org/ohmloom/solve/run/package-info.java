/**
 * Timed quasi-static run of a start: what a load, a control unit or a whole state draws while it starts, and what is left for
 * the others.
 *
 * <p>Part of floor 3. Start at {@link org.ohmloom.solve.run.StartUpStudy}; {@link org.ohmloom.solve.run.StartUp} is the result of
 * one run. Quasi-static: at every instant the network is solved as if its currents had settled, with the motors at the speed,
 * filaments at the warmth and capacitors at the voltage they have by then; inductance is left out.
 */
@NullMarked
package org.ohmloom.solve.run;

import org.jspecify.annotations.NullMarked;
