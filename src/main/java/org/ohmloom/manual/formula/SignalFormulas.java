package org.ohmloom.manual.formula;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.ThermocoupleVolts;
import org.ohmloom.signal.bus.FrameFormat;
import org.ohmloom.signal.bus.Message;
import org.ohmloom.signal.bus.ResponseTimes;
import org.ohmloom.signal.bus.wiring.LineFormulas;
import org.ohmloom.signal.calibration.ConverterInput;
import org.ohmloom.signal.calibration.PulseRate;
import org.ohmloom.signal.calibration.SignalKind;
import org.ohmloom.signal.channel.UpdateRate;
import org.ohmloom.tables.WireTables;

/** What sensors give and how long messages take. */
final class SignalFormulas {

    static final List<Formula> ALL = List.of(
            new Formula(
                    "thermistor",
                    "Resistance of a thermistor",
                    "R = R0 x exp(B x (1 / T - 1 / T0))",
                    Symbol.of(
                            """
                    R | resistance | ohm
                    R0 | resistance at the reference temperature | ohm
                    B | Beta | K
                    T, T0 | temperature and reference temperature, from absolute zero | K
                    """),
                    "Good over some tens of kelvins; three points (Steinhart and Hart) hold further.",
                    "Textbook",
                    "",
                    List.of("lists/sensors"),
                    new Worked(
                            "2.5 kohm at 20 °C, Beta 3500 K, at 80 °C.",
                            "1/353.15 - 1/293.15 = -5.7956e-4; x 3500 = -2.0285; exp 0.13154; x 2500 = 328.8 ohm",
                            328.8,
                            "ohm",
                            () -> new Calibration.Beta(2500, 20, 3500).ohms(80))),
            new Formula(
                    "update-rate",
                    "How often a sensor must be read",
                    "f = 10 / (2 x pi x tau), rounded up to 1, 2, 5, 10, ...",
                    Symbol.of(
                            """
                    f | suggested update rate | Hz
                    tau | time constant of what is measured | s
                    """),
                    "Ten values for each turn of a sine at the corner frequency.",
                    "Common practice, no source",
                    "",
                    List.of("rules/update-rate-unfit"),
                    new Worked(
                            "tau = 0.1 s.",
                            "10 / 0.6283 = 15.9 Hz, rounded up to 20 Hz",
                            20,
                            "Hz",
                            () -> UpdateRate.suggested(0.1))),
            new Formula(
                    "bus-line-resistance",
                    "Most resistance of a bus line",
                    "RL = R x (Vo / Vt - 1),   R = RT x Rd / (Rd + (n - 1) x RT)",
                    Symbol.of(
                            """
                    RL | most resistance of high and low line together | ohm
                    Vo | least voltage of the driver | V
                    Vt | threshold of the receiver with its margin | V
                    RT | termination | ohm
                    Rd | input resistance of a receiver | ohm
                    n | nodes |
                    """),
                    "The figures are rows of the table of bus figures: Vo 1.5 V, threshold 1.0 V with a margin of 0.2 of the way from it to the driver, RT 118 ohm, Rd 20 kohm.",
                    "Algebra; figures as CiA 303-1 takes them",
                    "",
                    List.of("rules/bus-beyond-limits"),
                    new Worked(
                            "32 nodes with these figures.",
                            "Vt = 1.0 + 0.2 x 0.5 = 1.1; R = 118 x 20 000 / (20 000 + 31 x 118) = 99.75; x (1.5 / 1.1 - 1) = 99.75 x 0.3636 = 36.27 ohm",
                            36.27,
                            "ohm",
                            () -> LineFormulas.allowedOhms(
                                    32, WireTables.bundled().signals()))),
            new Formula(
                    "frame-length",
                    "Longest frame of a data bus",
                    "n = g + 8 x s + 13 + floor((g + 8 x s - 1) / 4)",
                    Symbol.of(
                            """
                    n | bits with the three between frames |
                    g | 34 for identifiers of 11 bits, 54 for 29 |
                    s | bytes of data |
                    """),
                    "A stuff bit follows every five equal bits, and may begin the next five.",
                    "ISO 11898-1; Davis, Burns, Bril and Lukkien, Real-Time Systems 35, 2007, section 3.1 (from memory)",
                    "",
                    List.of("rules/bus-message-late"),
                    new Worked(
                            "11 bits, 8 bytes.",
                            "34 + 64 + 13 = 111; floor(97 / 4) = 24; 135 bits",
                            135,
                            "bits",
                            () -> FrameFormat.ofIdentifierBits(11).mostBits(8))),
            new Formula(
                    "response-time",
                    "How late a message can come",
                    "R = J + w + C,   w = B + sum of ceil((w + J' + bit) / T') x C'",
                    Symbol.of(
                            """
                    R | response time | s
                    J | jitter of the message | s
                    w | longest wait until it begins | s
                    C | its own frame | s
                    B | longest frame of lower priority | s
                    C', T', J' | frame, period and jitter of each message of higher priority | s
                    bit | time of a bit | s
                    """),
                    "Solved from w = B upwards until it stays. Where a message's own next one can fall due in the busy time, each of them is looked at and the largest counts.",
                    "Davis, Burns, Bril and Lukkien, Real-Time Systems 35, 2007, section 4 (from memory)",
                    "",
                    List.of("rules/bus-message-late"),
                    new Worked(
                            "Two messages of 8 bytes, 11 bits, every 10 ms at 500 kbit/s; the one with the higher priority.",
                            "a frame takes 135 / 500 000 = 270 µs; it waits for one of lower priority: 270 + 270 = 540 µs",
                            540,
                            "µs",
                            () -> 1e6
                                    * ResponseTimes.of(
                                                    List.of(
                                                            Message.of(
                                                                    "A", FrameFormat.ofIdentifierBits(11), 1, 8, 0.01),
                                                            Message.of(
                                                                    "B", FrameFormat.ofIdentifierBits(11), 2, 8, 0.01)),
                                                    500_000)
                                            .messages()
                                            .get(0)
                                            .responseSeconds()
                                            .orElseThrow())),
            new Formula(
                    "steinhart-hart",
                    "Temperature of a thermistor by three points",
                    "1 / T = A + B x ln R + C x (ln R)^3",
                    Symbol.of(
                            """
                    T | temperature from absolute zero | K
                    R | resistance; only its number stands in the logarithm | ohm
                    A, B, C | constants that carry the curve through its three points | 1/K
                    """),
                    "Holds over the range of the three points, where one Beta does not. The resistance at a temperature is solved from it by Newton's steps.",
                    "Steinhart and Hart, Deep-Sea Research 15, 1968",
                    "Steinhart and Hart, Deep-Sea Research 15, 1968",
                    List.of("lists/sensors", "views/returns-sensors"),
                    new Worked(
                            "A 1.125e-3, B 2.347e-4, C 8.566e-8, 10 kohm.",
                            "ln R = 9.2103; 1.125e-3 + 2.16167e-3 + 8.566e-8 x 781.32 = 3.35359e-3; 1 / 3.35359e-3 = 298.19 K; - 273.15 = 25.04 °C",
                            25.04,
                            "°C",
                            () -> new Calibration.SteinhartHart(1.125e-3, 2.347e-4, 8.566e-8).value(10_000))),
            new Formula(
                    "divider-reading",
                    "Resistance read under a pull-up",
                    "R = Rp x V / (Vp - V),   V = Vp x R / (R + Rp)",
                    Symbol.of(
                            """
                    R | resistance the unit takes the sensor to have | ohm
                    V | voltage at the pin | V
                    Rp | resistance of the pull-up | ohm
                    Vp | voltage the pull-up goes to | V
                    """),
                    "Whatever else lies in the loop is read as part of the sensor: wires and contacts in series, an offset of the return, the input's own resistance across it.",
                    "Voltage divider, Ohm's law",
                    "R = Rp V / (Vp - V)",
                    List.of("views/returns-sensors", "views/channels"),
                    new Worked(
                            "2.0 V at the pin, 2.2 kohm to 5 V.",
                            "5 - 2 = 3 V; 2200 x 2 / 3 = 1467 ohm",
                            1467,
                            "ohm",
                            () -> pullUp(2200, 5)
                                    .signal(SignalKind.RESISTANCE, 2.0)
                                    .orElseThrow())),
            new Formula(
                    "thermocouple",
                    "Voltage of a thermocouple of type K",
                    "E(T) = sum of c x T^i, i = 0 to 9, + a0 x exp(a1 x (T - a2)^2)",
                    Symbol.of(
                            """
                    E | voltage with the reference junction at 0 °C | mV
                    T | temperature of the measuring junction | °C
                    c | ten coefficients, one for each power i of T | mV/°C^i
                    a0, a1, a2 | 0.1185976 mV, -1.183432e-4, 126.9686 °C |
                    """),
                    "From 0 to 1372 °C; below 0 °C another polynomial without the last term, down to −270 °C. Voltages add up, temperatures do not: that of the cold junction is added to the one measured before the sum is turned into a temperature.",
                    "ITS-90: NIST Monograph 175; the coefficients at full precision from memory",
                    "E(T) = sum of c T^i + a0 exp(a1 (T - a2)^2)",
                    List.of("lists/sensors", "views/returns-sensors"),
                    new Worked(
                            "100 °C.",
                            "-0.01760 + 3.89212 + 0.18559 - 0.09946 + 0.03184 - 0.00561 + 0.00056 - 0.00003 = 3.98741; 0.1185976 x exp(-1.183432e-4 x 727.3) = 0.10882; together 4.096 mV, as the table of NIST has it",
                            4.096,
                            "mV",
                            () -> 1000 * ThermocoupleVolts.volts(100))),
            new Formula(
                    "pulse-rate",
                    "Pulses of a wheel",
                    "f = N x r x v / (pi x d)",
                    Symbol.of(
                            """
                    f | pulses in a second | Hz
                    N | pulses in one turn of the wheel the sensor looks at |
                    r | turns of that wheel for one turn of the tyre |
                    v | speed of travel | m/s
                    d | diameter of the tyre | m
                    """),
                    "Where a shaft is measured and not a vehicle, v / (pi x d) is its turns in a second. Slip of the tyre is not in it.",
                    "Geometry",
                    " x speed / (pi x ",
                    List.of("lists/sensors", "views/channels"),
                    new Worked(
                            "48 pulses in a turn of the wheel itself, a tyre of 0.65 m, 100 km/h.",
                            "100 / 3.6 = 27.78 m/s; / (3.1416 x 0.65) = 13.603 turns in a second; x 48 = 652.9 Hz",
                            652.9,
                            "Hz",
                            () -> 100
                                    * PulseRate.hertzPerUnit(
                                                    new Calibration.PulseLevels(
                                                            0.5,
                                                            OptionalDouble.of(4.5),
                                                            OptionalDouble.empty(),
                                                            OptionalDouble.empty(),
                                                            Optional.of(new Calibration.Turns(
                                                                    48,
                                                                    OptionalDouble.empty(),
                                                                    OptionalDouble.of(0.65)))),
                                                    "km/h")
                                            .orElseThrow())));

    private SignalFormulas() {}

    private static ConverterInput pullUp(double ohms, double volts) {
        return new ConverterInput(
                OptionalDouble.of(volts),
                OptionalDouble.of(ohms),
                OptionalDouble.empty(),
                Optional.empty(),
                0,
                OptionalDouble.of(volts),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalInt.empty());
    }
}
