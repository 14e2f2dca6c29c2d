/**
 * How far off a sensor reads for what its feed, its returns and its wires do to it.
 *
 * <p>Floor 4.
 */
@NullMarked
package org.ohmloom.ground.sensor;

import org.jspecify.annotations.NullMarked;
