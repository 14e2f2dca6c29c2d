package org.ohmloom.edit.board;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.Battery;
import org.ohmloom.model.BusBar;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Converter;
import org.ohmloom.model.Device;
import org.ohmloom.model.Diode;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Load;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.RegulatedSupply;
import org.ohmloom.model.Relay;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.Switch;

/**
 * Kinds of component to begin with. Their values are round figures of no particular part: they make an unfinished harness
 * calculable and are there to be overwritten with those of the part.
 */
public enum StartDevice {
    BATTERY("BT", "Battery", false, volts -> new Battery(1.05 * volts, 0.01, 60)),
    ALTERNATOR("ALT", "Alternator", false, volts -> new Alternator(1.2 * volts, 0.01, 100)),
    SUPPLY(
            "PS",
            "Bench supply",
            false,
            volts -> new RegulatedSupply(RegulatedSupply.Use.BENCH_SUPPLY, 1.1 * volts, 0.01, 20)),
    CONVERTER("DC", "DC-DC converter", true, volts -> new Converter(volts, 0.01, 10, 0.9, false)),
    FUSE(
            "F",
            "Fuse",
            false,
            volts -> new ProtectiveDevice(ProtectiveDevice.Kind.FUSE, "ISO 8820-3 type C", 10, OptionalDouble.empty())),
    SWITCH("S", "Switch", true, volts -> new Switch(List.of("2"), 0.005, 16)),
    RELAY("K", "Relay", true, volts -> new Relay(90 * volts / 12, 0.6 * volts, 0.2 * volts, 0.005, 30, false)),
    OUTPUT("Q", "Electronic switch", true, volts -> new SolidStateOutput(0.01, 10)),
    LAMP("E", "Lamp", true, volts -> Load.of(new Draw.Lamp(21 * volts / 12, volts))),
    HEATER("R", "Heater", true, volts -> Load.of(new Draw.Resistive(5, volts))),
    MOTOR("M", "Motor", true, volts -> Load.of(new Draw.Motor(5, 20, volts))),
    SENSOR("B", "Sensor", true, volts -> new Sensor(Sensor.Kind.RATIOMETRIC, 0.01, OptionalDouble.empty())),
    CONTROL_UNIT(
            "A",
            "Control unit",
            true,
            volts -> new ControlUnit(pins(), 0.2, OptionalDouble.empty(), OptionalDouble.empty())),
    BUS_BAR("BB", "Bus bar", false, volts -> new BusBar(List.of("1", "2", "3", "4"), 0.0001)),
    DIODE("V", "Diode", true, volts -> new Diode(0.7, 0.01, 5));

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

    /** Whether it comes with a connector; otherwise wires go to its own terminals. */
    boolean isPlugged() {
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
