package org.ohmloom.edit;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.Battery;
import org.ohmloom.model.BusBar;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Converter;
import org.ohmloom.model.Device;
import org.ohmloom.model.Diode;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.Relay;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.Switch;
import org.ohmloom.words.Constants;

/**
 * Kinds of component a person adds to a list and then types over. Their figures are round and of no particular part: they make an
 * unfinished harness calculable.
 */
public enum NewDevice {
    RESISTANCE("R", "Heater or other resistance", true, volts -> Load.of(new Draw.Resistive(5, volts))),
    LAMP("E", "Filament lamp", true, volts -> Load.of(new Draw.Lamp(2 * volts, volts))),
    MOTOR("M", "Motor", true, volts -> Load.of(new Draw.Motor(5, 20, volts))),
    SOLENOID("Y", "Solenoid", true, volts -> Load.of(new Draw.Inductive(1, volts, 0.05))),
    CONSTANT_POWER("E", "Constant-power load", true, volts -> Load.of(new Draw.ConstantPower(2 * volts, volts))),
    CONSTANT_CURRENT("E", "Constant-current load", true, volts -> Load.of(new Draw.ConstantCurrent(1, volts))),
    BATTERY("BT", "Battery", false, volts -> new Battery(21 * volts / 20, 0.01, 60)),
    ALTERNATOR("AL", "Alternator", false, volts -> new Alternator(6 * volts / 5, 0.01, 100)),
    CONVERTER("T", "Converter", false, volts -> new Converter(volts, 0.01, 10, 0.9, false)),
    FUSE(
            "F",
            "Fuse",
            false,
            volts -> new ProtectiveDevice(ProtectiveDevice.Kind.FUSE, "ISO 8820-3 type C", 10, OptionalDouble.empty())),
    SWITCH("S", "Switch", false, volts -> new Switch(List.of("2"), 0.005, 10)),
    RELAY(
            "K",
            "Relay",
            false,
            volts -> new Relay(8 * volts, 3 * volts / 5, volts / 5, 0.005, 30, false, OptionalDouble.empty())),
    SOLID_STATE_OUTPUT("Q", "Solid-state output", false, volts -> new SolidStateOutput(0.01, 10)),
    SENSOR("B", "Sensor", false, volts -> new Sensor(Sensor.Kind.RATIOMETRIC, 0.01, OptionalDouble.empty())),
    CONTROL_UNIT(
            "U",
            "Control unit",
            false,
            volts -> new ControlUnit(
                    List.of(Pin.of("1", PinRole.SUPPLY), Pin.of("2", PinRole.GROUND)),
                    0.2,
                    OptionalDouble.empty(),
                    OptionalDouble.empty())),
    BUS_BAR("BB", "Bus bar", false, volts -> new BusBar(List.of("1", "2", "3", "4"), 0.0001)),
    DIODE("V", "Diode", false, volts -> new Diode(0.7, 0.01, 5));

    private final String letters;
    private final String words;
    private final boolean load;
    private final DoubleFunction<Device> device;

    NewDevice(String letters, String words, boolean load, DoubleFunction<Device> device) {
        this.letters = letters;
        this.words = words;
        this.load = load;
        this.device = device;
    }

    /** What it is called, as "Fuse". */
    public String words() {
        return words;
    }

    /** Whether it is a load. */
    public boolean isLoad() {
        return load;
    }

    /**
     * The device for a system.
     *
     * @param volts nominal voltage of the system, V, more than 0
     */
    public Device at(double volts) {
        return device.apply(volts);
    }

    /** The edit that adds one, with the next identity of its letters. */
    public PutElements added(Harness harness) {
        String id = new FreshIds(harness).next(letters);
        Device made = at(harness.rules().nominalVolts());
        return PutElements.one(
                Labels.text("add", Constants.text(this).lowerCase(), id), Component.of(id, words + " " + id, made));
    }
}
