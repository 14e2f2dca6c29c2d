package org.ohmloom.workbench.lists;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.ohmloom.edit.ChangeDevice;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Cycle;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Inrush;
import org.ohmloom.model.Load;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** What is typed about how loads start, cycle and store energy, as edits, and the same as text. */
final class LoadEdits {
    private static final Words WORDS = Words.of("lists");

    /** Between the on-time and the period: "2 s of 10 s", as it is typed and read. */
    private static final String FORM = " of ";

    private LoadEdits() {}

    /** "60 A, 100 ms" or nothing. */
    static String text(Optional<Inrush> inrush) {
        return inrush.map(each -> Formats.amps(each.peakAmps()) + ", " + Formats.seconds(each.decaySeconds()))
                .orElse("");
    }

    /** The peak when switched on and its time constant, "60 A, 100 ms"; nothing takes it away. */
    static Edit inrush(List<ComponentId> loads, String typed) {
        Optional<Inrush> inrush = Optional.empty();
        if (!typed.isBlank()) {
            String[] parts = typed.strip().split("\\s*(;|,\\s+|/|\\bfor\\b|\\bin\\b)\\s*");
            if (parts.length != 2) {
                throw new IllegalArgumentException(WORDS.get("load.a-peak-and-the"));
            }
            inrush = Optional.of(new Inrush(
                    TypedNumbers.needed(parts[0], Unit.AMP, WORDS.get("load.the-peak")),
                    TypedNumbers.needed(parts[1], Unit.SECOND, WORDS.get("load.the-time-constant"))));
        }
        Optional<Inrush> set = inrush;
        return all(
                loads,
                WORDS.get("load.inrush-2"),
                load -> new Load(
                        load.draw(),
                        load.control(),
                        load.allowedDropVolts(),
                        load.diodeVolts(),
                        load.cycle(),
                        set,
                        load.minimumVolts()));
    }

    /** "60 s" or "10 s of 60 s". */
    static String text(Cycle cycle) {
        String period = Formats.seconds(cycle.periodSeconds());
        return cycle.onSeconds().isPresent()
                ? Formats.seconds(cycle.onSeconds().getAsDouble()) + FORM + period
                : period;
    }

    /** How a load switches itself: its period, or on-time "of" period; nothing for one that does not. */
    static Edit cycle(List<ComponentId> loads, String typed) {
        Optional<Cycle> cycle = Optional.empty();
        if (!typed.isBlank()) {
            String[] parts = typed.strip().toLowerCase(Locale.ROOT).split("\\s*\\bof\\b\\s*");
            double period = TypedNumbers.needed(parts[parts.length - 1], Unit.SECOND, WORDS.get("load.the-period"));
            OptionalDouble on =
                    parts.length > 1 ? TypedNumbers.optional(parts[0], Unit.SECOND) : OptionalDouble.empty();
            cycle = Optional.of(new Cycle(period, on));
        }
        Optional<Cycle> set = cycle;
        return all(
                loads,
                WORDS.get("load.cycle-2"),
                load -> new Load(
                        load.draw(),
                        load.control(),
                        load.allowedDropVolts(),
                        load.diodeVolts(),
                        set,
                        load.inrush(),
                        load.minimumVolts()));
    }

    /** Least voltage a load works at; nothing when not known. */
    static Edit least(List<ComponentId> loads, String typed) {
        OptionalDouble volts = TypedNumbers.optional(typed, Unit.VOLT);
        return all(
                loads,
                WORDS.get("load.least-voltage"),
                load -> new Load(
                        load.draw(),
                        load.control(),
                        load.allowedDropVolts(),
                        load.diodeVolts(),
                        load.cycle(),
                        load.inrush(),
                        volts));
    }

    /** Forward drop of the freewheel diode at the load; nothing when there is none. */
    static Edit diode(List<ComponentId> loads, String typed) {
        OptionalDouble volts = TypedNumbers.optional(typed, Unit.VOLT);
        return all(
                loads,
                WORDS.get("load.freewheel-diode"),
                load -> new Load(
                        load.draw(),
                        load.control(),
                        load.allowedDropVolts(),
                        volts,
                        load.cycle(),
                        load.inrush(),
                        load.minimumVolts()));
    }

    /** Inductance of a draw, H, if it has one. */
    static OptionalDouble henries(Draw draw) {
        if (draw instanceof Draw.Inductive inductive) {
            return OptionalDouble.of(inductive.inductanceHenries());
        }
        return draw instanceof Draw.MagnetMotor motor
                ? OptionalDouble.of(motor.inductanceHenries())
                : OptionalDouble.empty();
    }

    /** Whether a draw can be given an inductance. */
    static boolean canHaveInductance(Draw draw) {
        return draw instanceof Draw.Resistive || draw instanceof Draw.Inductive || draw instanceof Draw.MagnetMotor;
    }

    /** Inductance; nothing makes a solenoid a plain resistance. */
    static Edit inductance(List<ComponentId> loads, String typed) {
        OptionalDouble henries = TypedNumbers.optional(typed, Unit.HENRY);
        return all(loads, WORDS.get("load.inductance-2"), load -> load.withDraw(draw(load.draw(), henries)));
    }

    private static Draw draw(Draw draw, OptionalDouble henries) {
        if (draw instanceof Draw.MagnetMotor motor) {
            return new Draw.MagnetMotor(
                    motor.ratedAmps(),
                    motor.startAmps(),
                    motor.ratedVolts(),
                    henries.orElseThrow(() -> new IllegalArgumentException(WORDS.get("load.a-magnet-motor-has"))),
                    motor.freeAmps(),
                    motor.torque(),
                    motor.startSeconds(),
                    motor.ratedRpm());
        }
        if (!canHaveInductance(draw)) {
            return draw;
        }
        return henries.isPresent()
                ? new Draw.Inductive(draw.ratedAmps(), draw.ratedVolts(), henries.getAsDouble())
                : new Draw.Resistive(draw.ratedAmps(), draw.ratedVolts());
    }

    private static Edit all(List<ComponentId> loads, String what, UnaryOperator<Load> change) {
        List<Edit> edits = loads.stream()
                .map(load -> (Edit) new ChangeDevice(
                        WORDS.text("load.set-of", what, load),
                        load,
                        device -> device instanceof Load now ? change.apply(now) : device))
                .toList();
        return TypedNumbers.together(WORDS.text("load.set-of-loads", what, loads.size()), edits);
    }
}
