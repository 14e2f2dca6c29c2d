/**
 * Channels, calibrations, rates and data buses of a whole harness together.
 *
 * <p>Floor 4.
 */
@NullMarked
package org.ohmloom.signal.study;

import org.jspecify.annotations.NullMarked;
