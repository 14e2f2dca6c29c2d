/**
 * Control units: described by data a person can write, and which line of which sensor, load or relay goes to which of their pins.
 *
 * <p>Floor 4.
 */
@NullMarked
package org.ohmloom.signal.unit;

import org.jspecify.annotations.NullMarked;
