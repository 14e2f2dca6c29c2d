/**
 * Calibration of sensors: what each gives for what it measures, both ways, how finely its input tells it, and whether it serves.
 *
 * <p>Floor 4.
 */
@NullMarked
package org.ohmloom.signal.calibration;

import org.jspecify.annotations.NullMarked;
