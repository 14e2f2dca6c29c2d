package org.ohmloom.edit.board;

import java.util.List;
import java.util.function.DoubleFunction;
import org.ohmloom.edit.NewDevice;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Device;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.RegulatedSupply;

/**
 * Kinds of component to begin with. Their values are those of {@link NewDevice}: round figures of no particular part that make an
 * unfinished harness calculable and are there to be overwritten with those of the part.
 */
public enum StartDevice {
    BATTERY("BT", "Battery", false, NewDevice.BATTERY::at),
    ALTERNATOR("ALT", "Alternator", false, NewDevice.ALTERNATOR::at),
    SUPPLY(
            "PS",
            "Bench supply",
            false,
            volts -> new RegulatedSupply(RegulatedSupply.Use.BENCH_SUPPLY, 11 * volts / 10, 0.01, 20)),
    CONVERTER("DC", "DC-DC converter", true, NewDevice.CONVERTER::at),
    FUSE("F", "Fuse", false, NewDevice.FUSE::at),
    SWITCH("S", "Switch", true, NewDevice.SWITCH::at),
    RELAY("K", "Relay", true, NewDevice.RELAY::at),
    OUTPUT("Q", "Electronic switch", true, NewDevice.SOLID_STATE_OUTPUT::at),
    LAMP("E", "Lamp", true, NewDevice.LAMP::at),
    HEATER("R", "Heater", true, NewDevice.RESISTANCE::at),
    MOTOR("M", "Motor", true, NewDevice.MOTOR::at),
    SOLENOID("Y", "Solenoid", true, NewDevice.SOLENOID::at),
    CONSTANT_CURRENT("E", "Constant-current load", true, NewDevice.CONSTANT_CURRENT::at),
    CONSTANT_POWER("E", "Constant-power load", true, NewDevice.CONSTANT_POWER::at),
    SENSOR("B", "Sensor", true, NewDevice.SENSOR::at),
    CONTROL_UNIT("A", "Control unit", true, volts -> ((ControlUnit) NewDevice.CONTROL_UNIT.at(volts)).withPins(pins())),
    BUS_BAR("BB", "Bus bar", false, NewDevice.BUS_BAR::at),
    DIODE("V", "Diode", true, NewDevice.DIODE::at);

    private final String stem;
    private final String words;
    private final boolean plugged;
    private final DoubleFunction<Device> maker;

    StartDevice(String stem, String words, boolean plugged, DoubleFunction<Device> maker) {
        this.stem = stem;
        this.words = words;
        this.plugged = plugged;
        this.maker = maker;
    }

    /** What it is called to begin with. */
    public String words() {
        return words;
    }

    /** Letters its identities begin with. */
    String stem() {
        return stem;
    }

    /** Whether it usually comes with a connector; otherwise wires go to its own terminals. */
    public boolean isPlugged() {
        return plugged;
    }

    /**
     * The device for a system.
     *
     * @param volts nominal voltage of the system, V, more than 0
     */
    Device at(double volts) {
        return maker.apply(volts);
    }

    /** A drawn unit comes with a plug and a pin of each usual sort. */
    private static List<Pin> pins() {
        return List.of(
                Pin.of("1", PinRole.SUPPLY),
                Pin.of("2", PinRole.GROUND),
                Pin.of("3", PinRole.HIGH_SIDE_OUTPUT),
                Pin.of("4", PinRole.REFERENCE_SUPPLY),
                Pin.of("5", PinRole.SENSOR_RETURN),
                Pin.of("6", PinRole.ANALOGUE_INPUT));
    }
}
