/**
 * Wires made from a plan of channels: splices, pairs, shields, bulkheads and colours.
 *
 * <p>Floor 4.
 */
@NullMarked
package org.ohmloom.signal.wiring;

import org.jspecify.annotations.NullMarked;
