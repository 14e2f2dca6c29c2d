package org.ohmloom.workbench.words;

import java.util.Locale;
import java.util.Optional;
import org.ohmloom.draw.SignalLook;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.Battery;
import org.ohmloom.model.BatteryIsolator;
import org.ohmloom.model.BusBar;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Converter;
import org.ohmloom.model.Device;
import org.ohmloom.model.Diode;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Place;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.RegulatedSupply;
import org.ohmloom.model.Relay;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.Switch;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.ShownUnits;

/** Words of the trade for what the model calls by its types. */
public final class TradeWords {

    private TradeWords() {}

    /** What a device is: "fuse", "motor", "battery". */
    public static String kind(Device device) {
        if (device instanceof Load load) {
            return kind(load.draw());
        }
        if (device instanceof ProtectiveDevice protective) {
            return protective.kind() == ProtectiveDevice.Kind.FUSE ? "fuse" : "breaker";
        }
        if (device instanceof Battery) {
            return "battery";
        }
        if (device instanceof Alternator) {
            return "alternator";
        }
        if (device instanceof RegulatedSupply supply) {
            return lower(supply.use());
        }
        if (device instanceof Converter) {
            return "converter";
        }
        if (device instanceof Diode) {
            return "diode";
        }
        if (device instanceof BatteryIsolator) {
            return "battery isolator";
        }
        if (device instanceof Switch) {
            return "switch";
        }
        if (device instanceof Relay) {
            return "relay";
        }
        if (device instanceof SolidStateOutput) {
            return "solid-state output";
        }
        if (device instanceof Sensor sensor) {
            return "sensor, " + lower(sensor.kind());
        }
        if (device instanceof ControlUnit) {
            return "control unit";
        }
        return device instanceof BusBar ? "bus bar" : "component";
    }

    /** What kind of load: "motor", "lamp". */
    public static String kind(Draw draw) {
        if (draw instanceof Draw.Motor || draw instanceof Draw.MagnetMotor) {
            return "motor";
        }
        if (draw instanceof Draw.Lamp) {
            return "lamp";
        }
        if (draw instanceof Draw.Inductive) {
            return "solenoid";
        }
        if (draw instanceof Draw.Resistive) {
            return "resistance";
        }
        return draw instanceof Draw.ConstantPower ? "constant power" : "constant current";
    }

    /** What a calibration is. */
    public static String kind(Calibration calibration) {
        if (calibration instanceof Calibration.RatiometricLine) {
            return "ratiometric line";
        }
        if (calibration instanceof Calibration.VoltageLine) {
            return "voltage line";
        }
        if (calibration instanceof Calibration.CurrentLine) {
            return "current line";
        }
        if (calibration instanceof Calibration.Beta) {
            return "thermistor";
        }
        if (calibration instanceof Calibration.SteinhartHart) {
            return "thermistor";
        }
        if (calibration instanceof Calibration.ResistanceTable) {
            return "table of resistances";
        }
        if (calibration instanceof Calibration.SwitchContact) {
            return "contact";
        }
        if (calibration instanceof Calibration.VoltageTable) {
            return "table of voltages";
        }
        if (calibration instanceof Calibration.AmplifiedThermocouple) {
            return "thermocouple with amplifier";
        }
        return calibration instanceof Calibration.PulseLevels ? "pulses" : "thermocouple";
    }

    /** What a wire carries. */
    public static String signal(SignalClass signalClass) {
        return SignalLook.of(signalClass).word();
    }

    /** Where something lies on the physical harness. */
    public static String place(Place place) {
        if (place instanceof Place.OnSegment on) {
            return on.segment() + ", " + Formats.metres(on.distanceMetres()) + " along";
        }
        return place instanceof Place.AtBreakout at ? at.breakout().value() : "";
    }

    /** What the engine does. */
    public static String engine(OperatingState.EngineMode mode) {
        return lower(mode);
    }

    /** A size by its own name: "2.5 mm²", "14 AWG". */
    public static String size(Gauge gauge) {
        return ShownUnits.USUAL.name(gauge);
    }

    /** A size, or a dash. */
    public static String size(Optional<Gauge> gauge) {
        return gauge.map(TradeWords::size).orElse("–");
    }

    /** A constant's name in plain words. */
    public static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** A text with its first letter in upper case. */
    public static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** A count with its noun: "1 wire", "3 wires". */
    public static String count(long count, String singular) {
        return count + " " + singular + (count == 1 ? "" : "s");
    }
}
