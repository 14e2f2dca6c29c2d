package org.ohmloom.model;

import java.util.List;

/**
 * What a component does electrically. Every device names its terminals; the electrical graph turns it into branches
 * between them. Values are those of the part; what is on, and how, belongs to the {@link OperatingState}.
 */
public sealed interface Device
        permits Battery,
                Alternator,
                RegulatedSupply,
                Converter,
                Diode,
                BatteryIsolator,
                ProtectiveDevice,
                Switch,
                Relay,
                SolidStateOutput,
                Load,
                Sensor,
                ControlUnit,
                BusBar {

    /** Name of the positive terminal of a two-terminal source or load. */
    String POSITIVE = "+";

    /** Name of the negative terminal of a two-terminal source or load. */
    String NEGATIVE = "-";

    /** Names of the terminals in a fixed order, each once. */
    List<String> terminals();

    /** Whether the device can feed the harness: battery, alternator or regulated supply. */
    default boolean isSource() {
        return false;
    }
}
