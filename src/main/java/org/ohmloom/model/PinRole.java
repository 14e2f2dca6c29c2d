package org.ohmloom.model;

/** What a pin of a control unit is used as in this harness; what else it could be is {@link Pin#capabilities()}. */
public enum PinRole {
    /** Power supply of the unit. */
    SUPPLY,
    /** Ground of the power supply. */
    GROUND,
    /** Case of the unit. */
    CASE,
    /** Regulated supply for sensors. */
    REFERENCE_SUPPLY,
    /** Return for sensors, kept apart from power returns. */
    SENSOR_RETURN,
    /** Input for a voltage. */
    ANALOGUE_INPUT,
    /** Input with a pull-up resistor for a thermistor. */
    THERMISTOR_INPUT,
    /** Input for a switch to battery positive. */
    SWITCH_TO_BATTERY_INPUT,
    /** Input for a switch to ground. */
    SWITCH_TO_GROUND_INPUT,
    /** Input for a frequency or for pulses. */
    FREQUENCY_INPUT,
    /** Switches a load to the supply pins. */
    HIGH_SIDE_OUTPUT,
    /** Switches a load to the ground pins. */
    LOW_SIDE_OUTPUT,
    /** Data bus, dominant high line. */
    BUS_HIGH,
    /** Data bus, dominant low line. */
    BUS_LOW,
    /** Not used. */
    SPARE;

    /** Whether an operating state can switch the pin. */
    public boolean isOutput() {
        return this == HIGH_SIDE_OUTPUT || this == LOW_SIDE_OUTPUT;
    }

    /** Whether the unit reads something at the pin. */
    public boolean isInput() {
        return switch (this) {
            case ANALOGUE_INPUT,
                    THERMISTOR_INPUT,
                    SWITCH_TO_BATTERY_INPUT,
                    SWITCH_TO_GROUND_INPUT,
                    FREQUENCY_INPUT -> true;
            default -> false;
        };
    }
}
