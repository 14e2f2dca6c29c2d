package org.ohmloom.workbench.words;

import java.util.Locale;
import java.util.Optional;
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
import org.ohmloom.review.Rule;
import org.ohmloom.review.Rules;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.words.Constants;

/** Words of the trade for what the model calls by its types. */
public final class TradeWords {
    private static final Words WORDS = Words.of("trade");

    private TradeWords() {}

    /** What a device is: "fuse", "motor", "battery". */
    public static String kind(Device device) {
        if (device instanceof Load load) {
            return kind(load.draw());
        }
        if (device instanceof ProtectiveDevice protective) {
            return protective.kind() == ProtectiveDevice.Kind.FUSE ? WORDS.get("kind.fuse") : WORDS.get("kind.breaker");
        }
        if (device instanceof Battery) {
            return WORDS.get("kind.battery");
        }
        if (device instanceof Alternator) {
            return WORDS.get("kind.alternator");
        }
        if (device instanceof RegulatedSupply supply) {
            return named(supply.use());
        }
        if (device instanceof Converter) {
            return WORDS.get("kind.converter");
        }
        if (device instanceof Diode) {
            return WORDS.get("kind.diode");
        }
        if (device instanceof BatteryIsolator) {
            return WORDS.get("kind.battery-isolator");
        }
        if (device instanceof Switch) {
            return WORDS.get("kind.switch");
        }
        if (device instanceof Relay) {
            return WORDS.get("kind.relay");
        }
        if (device instanceof SolidStateOutput) {
            return WORDS.get("kind.solid-state-output");
        }
        if (device instanceof Sensor sensor) {
            return WORDS.get("kind.sensor", named(sensor.kind()));
        }
        if (device instanceof ControlUnit) {
            return WORDS.get("kind.control-unit");
        }
        return device instanceof BusBar ? WORDS.get("kind.bus-bar") : WORDS.get("kind.component");
    }

    /** What kind of load: "motor", "lamp". */
    public static String kind(Draw draw) {
        if (draw instanceof Draw.Motor || draw instanceof Draw.MagnetMotor) {
            return WORDS.get("kind.motor");
        }
        if (draw instanceof Draw.Lamp) {
            return WORDS.get("kind.lamp");
        }
        if (draw instanceof Draw.Inductive) {
            return WORDS.get("kind.solenoid");
        }
        if (draw instanceof Draw.Resistive) {
            return WORDS.get("kind.resistance");
        }
        return draw instanceof Draw.ConstantPower
                ? WORDS.get("kind.constant-power")
                : WORDS.get("kind.constant-current");
    }

    /** What a calibration is. */
    public static String kind(Calibration calibration) {
        if (calibration instanceof Calibration.RatiometricLine) {
            return WORDS.get("kind.ratiometric-line");
        }
        if (calibration instanceof Calibration.VoltageLine) {
            return WORDS.get("kind.voltage-line");
        }
        if (calibration instanceof Calibration.CurrentLine) {
            return WORDS.get("kind.current-line");
        }
        if (calibration instanceof Calibration.Beta) {
            return WORDS.get("kind.thermistor");
        }
        if (calibration instanceof Calibration.SteinhartHart) {
            return WORDS.get("kind.thermistor");
        }
        if (calibration instanceof Calibration.ResistanceTable) {
            return WORDS.get("kind.table-of-resistances");
        }
        if (calibration instanceof Calibration.SwitchContact) {
            return WORDS.get("kind.contact");
        }
        if (calibration instanceof Calibration.VoltageTable) {
            return WORDS.get("kind.table-of-voltages");
        }
        if (calibration instanceof Calibration.AmplifiedThermocouple) {
            return WORDS.get("kind.thermocouple-with-amplifier");
        }
        return calibration instanceof Calibration.PulseLevels
                ? WORDS.get("kind.pulses")
                : WORDS.get("kind.thermocouple");
    }

    /** What a wire carries. */
    public static String signal(SignalClass signalClass) {
        return WORDS.get("signal." + lower(signalClass).replace(' ', '-'));
    }

    /** Where something lies on the physical harness. */
    public static String place(Place place) {
        if (place instanceof Place.OnSegment on) {
            return WORDS.get("place.along", on.segment(), Formats.metres(on.distanceMetres()));
        }
        return place instanceof Place.AtBreakout at ? at.breakout().value() : "";
    }

    /** What the engine does. */
    public static String engine(OperatingState.EngineMode mode) {
        return named(mode);
    }

    /** A size by its own name: "2.5 mm²", "14 AWG". */
    public static String size(Gauge gauge) {
        return ShownUnits.USUAL.name(gauge);
    }

    /** A size, or a dash. */
    public static String size(Optional<Gauge> gauge) {
        return gauge.map(TradeWords::size).orElse("–");
    }

    /** What a constant of the model, a severity or a status is called, in the language of the display. */
    public static String named(Enum<?> constant) {
        return Words.said(Constants.text(constant));
    }

    /** A constant's name in lower case with blanks, as keys of bundles are made from. */
    public static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** A text with its first letter in upper case. */
    public static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /**
     * A count with its noun: "1 wire", "3 wires".
     *
     * @param noun in the singular, one of those the bundle knows under {@code count}
     */
    public static String count(long count, String noun) {
        return WORDS.get("count." + noun, String.valueOf(count), count);
    }

    /** What a rule of the review is called. */
    public static String rule(String id) {
        return Rules.ALL.stream()
                .map(Rule::info)
                .filter(info -> info.id().equals(id))
                .map(info -> Words.said(info.title()))
                .findFirst()
                .orElse(id);
    }
}
