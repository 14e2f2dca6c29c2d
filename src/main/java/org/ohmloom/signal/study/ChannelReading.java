package org.ohmloom.signal.study;

import java.util.Optional;
import org.ohmloom.signal.calibration.SensorCalibration;
import org.ohmloom.signal.channel.SensorChannel;
import org.ohmloom.signal.channel.UpdateRate;

/**
 * What is known of one channel.
 *
 * @param channel     sensor and input
 * @param rate        how often its value is sent
 * @param calibration what the sensor gives and the input makes of it; empty where what it measures is not entered
 */
public record ChannelReading(SensorChannel channel, UpdateRate rate, Optional<SensorCalibration> calibration) {}
