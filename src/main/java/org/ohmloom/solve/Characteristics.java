package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.Law;

/** Makes the characteristic of each branch of a circuit in one moment; what never changes is made once. */
final class Characteristics {

    private interface Moving {
        Characteristic at(List<Part> at, Optional<ChokeLevels> levels, Outputs outputs);
    }

    private record Place(int branch, Moving moving) {}

    private final Characteristic[] fixed;
    private final List<Place> places = new ArrayList<>();

    /**
     * Prepares the characteristics of a circuit.
     *
     * @param circuit the circuit
     * @param clocks  the clocks of what switches in it
     */
    Characteristics(Circuit circuit, List<Clock> clocks) {
        fixed = new Characteristic[circuit.branches().size()];
        for (int number = 0; number < fixed.length; number++) {
            Branch branch = circuit.branches().get(number);
            fixed[number] = resting(branch.law());
            int place = number;
            moving(branch, fixed[number], clocks).ifPresent(moving -> places.add(new Place(place, moving)));
        }
    }

    /**
     * The characteristics in a moment.
     *
     * @param at      the part each clock is in
     * @param levels  what inductive loads and capacitors are; empty to take the loads at their running points
     * @param outputs what the outputs of converters give
     */
    Characteristic[] at(List<Part> at, Optional<ChokeLevels> levels, Outputs outputs) {
        Characteristic[] laws = fixed.clone();
        for (Place place : places) {
            laws[place.branch()] = place.moving().at(at, levels, outputs);
        }
        return laws;
    }

    private static Optional<Moving> moving(Branch branch, Characteristic rest, List<Clock> clocks) {
        Law law = branch.law();
        if (Clock.pulse(law).isPresent()) {
            int clock = clock(branch, clocks);
            boolean[] on = new boolean[clocks.get(clock).stretches().size()];
            for (int stretch = 0; stretch < on.length; stretch++) {
                on[stretch] = clocks.get(clock).stretches().get(stretch).on().contains(branch.id());
            }
            return Optional.of((at, levels, outputs) -> on[at.get(clock).stretch()] ? rest : Blocked.BLOCKED);
        }
        if (law instanceof Law.PowerOf || law instanceof Law.CurrentOf) {
            return Optional.of((at, levels, outputs) -> of(law, outputs));
        }
        return isStore(law)
                ? Optional.of((at, levels, outputs) -> levels.flatMap(each -> each.characteristic(branch.id(), at))
                        .orElse(rest))
                : Optional.empty();
    }

    /** The characteristic of one law, of what switches while it is on, of inductive loads at their running point. */
    static Characteristic of(Law law, Outputs outputs) {
        if (law instanceof Law.PowerOf input) {
            double watts = outputs.of(input.output()).watts() / input.efficiencyFraction();
            return watts > 0 ? DrawnPower.of(watts) : Asleep.ASLEEP;
        }
        return law instanceof Law.CurrentOf input
                ? new DrawnCurrent(outputs.of(input.output()).amps())
                : resting(law);
    }

    private static int clock(Branch branch, List<Clock> clocks) {
        for (int clock = 0; clock < clocks.size(); clock++) {
            boolean known = clocks.get(clock).stretches().stream()
                    .anyMatch(stretch -> stretch.on().contains(branch.id()));
            if (known) {
                return clock;
            }
        }
        throw new IllegalStateException("no clock for " + branch.id());
    }

    /** Whether a law keeps energy from one moment to the next. */
    static boolean isStore(Law law) {
        return law instanceof Law.Inductive || law instanceof Law.MagnetMotor || law instanceof Law.SupplyCapacitor;
    }

    /** What a branch is when nothing switches; of what switches, what it is while on. */
    private static Characteristic resting(Law law) {
        if (law instanceof Law.Resistance resistance) {
            return new Ohmic(resistance.ohms());
        }
        if (law instanceof Law.SwitchedResistance switched) {
            return new Ohmic(switched.onOhms());
        }
        if (law instanceof Law.Cycled cycled) {
            return resting(cycled.law());
        }
        if (law instanceof Law.VoltageSource source) {
            return LimitedSource.of(source);
        }
        if (law instanceof Law.ConstantCurrent current) {
            return new DrawnCurrent(current.amps());
        }
        if (law instanceof Law.ConstantPower power) {
            return DrawnPower.of(power.watts());
        }
        if (law instanceof Law.PowerLaw lamp) {
            return new Lamp(lamp.ratedAmps(), lamp.ratedVolts(), lamp.exponent());
        }
        if (law instanceof Law.Threshold diode) {
            return new Rectifier(diode.forwardVolts(), diode.ohms());
        }
        if (law instanceof Law.BackEmf motor) {
            return new Rectifier(motor.counterVolts(), motor.ohms());
        }
        if (law instanceof Law.Inductive inductive) {
            return new Ohmic(inductive.ohms());
        }
        if (law instanceof Law.MagnetMotor motor) {
            return new RunningMotor(motor);
        }
        if (law instanceof Law.FixedCurrent current) {
            return new ForcedCurrent(current.amps());
        }
        return Blocked.BLOCKED;
    }
}
