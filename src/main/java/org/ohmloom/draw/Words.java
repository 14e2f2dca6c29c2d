package org.ohmloom.draw;

import org.ohmloom.model.Alternator;
import org.ohmloom.model.Battery;
import org.ohmloom.model.BatteryIsolator;
import org.ohmloom.model.BusBar;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Converter;
import org.ohmloom.model.Device;
import org.ohmloom.model.Diode;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Load;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.RegulatedSupply;
import org.ohmloom.model.Relay;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.Switch;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** What things are called on drawings, in plain trade language. */
public final class Words {

    private static final MessageBundle TEXTS = MessageBundle.beside(Words.class, "drawings");

    private Words() {}

    /** A text of the bundle {@code drawings} with its gaps filled. */
    public static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }

    /** A device in two or three words with its rating. */
    static Text told(Device device) {
        if (device instanceof Battery battery) {
            return text("device.battery", Formats.volts(battery.emfVolts()));
        }
        if (device instanceof ProtectiveDevice protective) {
            boolean fuse = protective.kind() == ProtectiveDevice.Kind.FUSE;
            return text(fuse ? "device.fuse" : "device.breaker", Formats.amps(protective.ratingAmps()));
        }
        if (device instanceof Load load) {
            boolean motor = load.draw() instanceof Draw.Motor || load.draw() instanceof Draw.MagnetMotor;
            String kind = motor ? "device.motor" : load.draw() instanceof Draw.Lamp ? "device.lamp" : "device.load";
            return text(kind, Formats.amps(load.draw().ratedAmps()));
        }
        return text("device." + kind(device));
    }

    /** The same in English. */
    public static String device(Device device) {
        return told(device).english();
    }

    private static String kind(Device device) {
        if (device instanceof Alternator) {
            return "alternator";
        }
        if (device instanceof RegulatedSupply) {
            return "supply";
        }
        if (device instanceof Converter) {
            return "converter";
        }
        if (device instanceof Diode) {
            return "diode";
        }
        if (device instanceof BatteryIsolator) {
            return "battery-isolator";
        }
        if (device instanceof Switch) {
            return "switch";
        }
        if (device instanceof Relay) {
            return "relay";
        }
        if (device instanceof SolidStateOutput) {
            return "solid-state-output";
        }
        if (device instanceof Sensor) {
            return "sensor";
        }
        if (device instanceof ControlUnit) {
            return "control-unit";
        }
        if (device instanceof BusBar) {
            return "bus-bar";
        }
        return "component";
    }

    /** Cavities of a connector: "4-way". */
    static Text ways(Connector connector) {
        return text("ways", String.valueOf(connector.cavities().size()));
    }

    /** A count of wires: "1 wire", "3 wires". */
    public static Text wires(int count) {
        return count == 1 ? text("one-wire") : text("wires", String.valueOf(count));
    }

    /** A length in whole millimetres, without the unit: "1500". */
    static String millimetres(double metres) {
        return String.valueOf(Math.round(metres * 1000));
    }

    /** A conductor size as people write it: "2.5 mm²", "14 AWG". */
    public static String size(Gauge gauge) {
        return ShownUnits.USUAL.name(gauge);
    }
}
