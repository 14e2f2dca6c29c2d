package org.ohmloom.signal.study;

import org.ohmloom.model.DataBus;
import org.ohmloom.signal.bus.traffic.BusTraffic;
import org.ohmloom.signal.bus.wiring.BusWiring;

/**
 * What is known of one data bus.
 *
 * @param bus     the bus
 * @param wiring  how it is wired
 * @param traffic what is sent on it
 */
public record BusReading(DataBus bus, BusWiring wiring, BusTraffic traffic) {}
