package org.ohmloom.signal.calibration;

import java.util.OptionalDouble;

/**
 * One row of a calibration sheet.
 *
 * @param value    value, in the unit of the measurement
 * @param signal   what the sensor gives there, V, ohm, A or Hz by its {@link SignalKind}
 * @param pinVolts voltage at the pin, V, where one is known
 */
public record CurvePoint(double value, double signal, OptionalDouble pinVolts) {}
