/**
 * How a data bus is wired: trunk, stubs, terminations, resistance, twist and shield, against the limits of its set.
 *
 * <p>Floor 4.
 */
@NullMarked
package org.ohmloom.signal.bus.wiring;

import org.jspecify.annotations.NullMarked;
