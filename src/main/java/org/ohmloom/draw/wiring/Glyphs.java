package org.ohmloom.draw.wiring;

import java.util.List;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.Battery;
import org.ohmloom.model.BatteryIsolator;
import org.ohmloom.model.Converter;
import org.ohmloom.model.Device;
import org.ohmloom.model.Diode;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Load;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.Relay;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.Switch;

/** What lies between which terminals of a device. */
final class Glyphs {

    private Glyphs() {}

    /** What stands for the device as a whole. */
    static Glyph of(Device device) {
        if (device instanceof Battery) {
            return Glyph.BATTERY;
        }
        if (device instanceof ProtectiveDevice protective) {
            return protective.kind() == ProtectiveDevice.Kind.FUSE ? Glyph.FUSE : Glyph.BREAKER;
        }
        if (device instanceof Load load) {
            return load(load.draw());
        }
        if (device instanceof Switch) {
            return Glyph.CONTACT;
        }
        if (device instanceof Relay) {
            return Glyph.COIL;
        }
        if (device instanceof SolidStateOutput) {
            return Glyph.OUTPUT;
        }
        if (device instanceof Alternator) {
            return Glyph.GENERATOR;
        }
        return device instanceof Diode || device instanceof BatteryIsolator ? Glyph.DIODE : Glyph.TRANSDUCER;
    }

    private static Glyph load(Draw draw) {
        if (draw instanceof Draw.Motor || draw instanceof Draw.MagnetMotor) {
            return Glyph.MOTOR;
        }
        return draw instanceof Draw.Lamp ? Glyph.LAMP : Glyph.RESISTANCE;
    }

    /** The ways through a device, in the order they are drawn. */
    static List<Symbol.Way> ways(Device device) {
        Glyph glyph = of(device);
        if (device instanceof ProtectiveDevice) {
            return List.of(new Symbol.Way(ProtectiveDevice.SUPPLY_SIDE, ProtectiveDevice.LOAD_SIDE, glyph));
        }
        if (device instanceof Load) {
            return List.of(new Symbol.Way(Device.POSITIVE, Device.NEGATIVE, glyph));
        }
        if (device instanceof Switch hand) {
            return hand.positions().stream()
                    .map(position -> new Symbol.Way(Switch.COMMON, position, glyph))
                    .toList();
        }
        if (device instanceof Relay relay) {
            Symbol.Way make = new Symbol.Way(Relay.COMMON, Relay.MAKE, Glyph.CONTACT);
            Symbol.Way coil = new Symbol.Way(Relay.COIL_B, Relay.COIL_A, Glyph.COIL);
            return relay.changeOver()
                    ? List.of(make, new Symbol.Way(Relay.COMMON, Relay.BREAK, Glyph.CONTACT), coil)
                    : List.of(make, coil);
        }
        if (device instanceof SolidStateOutput) {
            return List.of(new Symbol.Way(SolidStateOutput.IN, SolidStateOutput.OUT, glyph));
        }
        if (device instanceof Diode) {
            return List.of(new Symbol.Way(Diode.ANODE, Diode.CATHODE, glyph));
        }
        if (device instanceof BatteryIsolator isolator) {
            return isolator.outputTerminals().stream()
                    .map(out -> new Symbol.Way(BatteryIsolator.IN, out, glyph))
                    .toList();
        }
        if (device instanceof Converter) {
            return List.of(new Symbol.Way(Converter.IN_POSITIVE, Converter.OUT_POSITIVE, glyph));
        }
        return device instanceof Sensor ? List.of(new Symbol.Way(Sensor.SIGNAL, Sensor.RETURN, glyph)) : List.of();
    }
}
