package org.ohmloom.ground.sensor;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.graph.Passages;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Device;
import org.ohmloom.model.Harness;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.LinearNetwork;
import org.ohmloom.solve.Solution;

/**
 * What the solved network of a state says about a link.
 *
 * <p>The offset of the sensor's return is the solved voltage V(return) - V(unit's sensor return). By superposition it is told apart
 * into what the sensor's own supply current makes (transfer resistance times that current), what the signal's own current makes,
 * and the rest: all other equipment. The signal's current changes with the value, so its part is left to the circuit of the
 * channel, with the resistance of the return as it was found.
 *
 * @param ideal          how it would be without any disturbance
 * @param actual         how it is
 * @param referenceVolts what the sensor's supply would be without droop on the way, V
 */
record SolvedLink(Conditions ideal, Conditions actual, double referenceVolts) {

    /** Least supply of a unit that says none, V: below it, it is taken as off. */
    private static final double LEAST_VOLTS = 1;

    /** Reads a solution; empty when the unit is off or a voltage is not known. */
    static Optional<SolvedLink> of(Harness harness, SensorLink link, Solution solution, LinearNetwork conductors) {
        if (!isOn(link, solution)) {
            return Optional.empty();
        }
        double lead =
                ohms(conductors, link.signal(), link.at()) + (isCurrent(link) ? feedOhms(harness, link, solution) : 0);
        double back = link.back()
                .map(point -> ohms(conductors, point, link.reference()))
                .orElse(0.0);
        OptionalDouble offset =
                link.back().isPresent() ? between(solution, link.back().get(), link.reference()) : OptionalDouble.of(0);
        if (offset.isEmpty()) {
            return Optional.empty();
        }
        double ownOhms = link.back()
                .map(point -> ownOhms(link, solution, conductors, point))
                .orElse(0.0);
        double own = ownOhms * amps(solution, link, Sensor.SUPPLY);
        double other = offset.getAsDouble() - own - back * amps(solution, link, Sensor.SIGNAL);
        double reference = link.referenceSupply()
                .flatMap(pin -> terminal(link, pin, solution))
                .map(point -> between(solution, point, link.reference()).orElse(Double.NaN))
                .orElse(Double.NaN);
        double supply = link.supply()
                .map(point -> between(solution, point, link.reference()).orElse(Double.NaN))
                .orElse(Double.NaN);
        double atUnit = link.fed().isPresent() ? reference : supply;
        InputStage input = link.pin().input().orElse(InputStage.UNKNOWN);
        Conditions ideal = undisturbed(harness, link);
        Conditions actual = new Conditions(
                reference,
                supply,
                own,
                other,
                lead,
                back,
                input.inputOhms().isPresent() ? 1 / input.inputOhms().getAsDouble() : 0,
                link.sensor().measurement().stream()
                        .anyMatch(each -> each.dissipationWattsPerKelvin().isPresent()),
                joint(harness, link, ideal.jointCelsius()),
                input.coldJunction()
                        .filter(each -> each == InputStage.ColdJunction.NONE)
                        .isEmpty());
        return Optional.of(new SolvedLink(ideal, actual, isCurrent(link) ? Double.POSITIVE_INFINITY : atUnit));
    }

    /** How a link would be without any disturbance. */
    static Conditions undisturbed(Harness harness, SensorLink link) {
        double nominal = link.referenceSupply()
                .map(pin -> pin.referenceVolts().orElse(Double.NaN))
                .orElse(Double.NaN);
        return new Conditions(
                nominal,
                isCurrent(link) ? Double.POSITIVE_INFINITY : nominal,
                0,
                0,
                0,
                0,
                0,
                false,
                ChannelChoice.ambientCelsius(harness, link.unitComponent()),
                true);
    }

    private static boolean isCurrent(SensorLink link) {
        return link.sensor()
                .measurement()
                .filter(each -> each.calibration() instanceof Calibration.CurrentLine)
                .isPresent();
    }

    /**
     * Resistance of the way a current transmitter is fed by, ohm: from the unit's reference supply, or from the first source. The
     * current of the loop is not among the currents the network was solved with.
     */
    private static double feedOhms(Harness harness, SensorLink link, Solution solution) {
        Optional<PointId> source = link.fed()
                .flatMap(pin -> terminal(link, pin, solution))
                .or(() -> NetworkBuilder.firstSource(harness)
                        .flatMap(battery -> solution.network().index().terminal(battery.id(), Device.POSITIVE)));
        if (link.supply().isEmpty() || source.isEmpty()) {
            return 0;
        }
        return new Passages(solution.network())
                .shortest(link.supply().get(), Set.of(source.get())).stream()
                        .filter(branch -> branch.law() instanceof Law.Resistance)
                        .mapToDouble(branch -> ((Law.Resistance) branch.law()).ohms())
                        .sum();
    }

    private static boolean isOn(SensorLink link, Solution solution) {
        ControlUnit unit = link.unit();
        Optional<PointId> feed = unit.pinsOf(PinRole.SUPPLY).findFirst().flatMap(pin -> terminal(link, pin, solution));
        Optional<PointId> ground =
                unit.pinsOf(PinRole.GROUND).findFirst().flatMap(pin -> terminal(link, pin, solution));
        return feed.isPresent()
                && ground.isPresent()
                && between(solution, feed.get(), ground.get()).orElse(0)
                        >= unit.minimumVolts().orElse(LEAST_VOLTS);
    }

    private static Optional<PointId> terminal(SensorLink link, Pin pin, Solution solution) {
        return solution.network().index().terminal(link.unitComponent().id(), pin.name());
    }

    private static double joint(Harness harness, SensorLink link, double terminals) {
        return link.sensor().measurement().stream()
                .filter(each -> each.calibration() instanceof Calibration.Thermocouple)
                .map(each -> (Calibration.Thermocouple) each.calibration())
                .filter(each -> each.extension()
                        .filter(made -> made == Calibration.Thermocouple.Extension.COPPER)
                        .isPresent())
                .mapToDouble(
                        each -> each.jointCelsius().orElse(ChannelChoice.ambientCelsius(harness, link.component())))
                .findFirst()
                .orElse(terminals);
    }

    /** Resistance between two points over conductors, ohm. */
    private static double ohms(LinearNetwork conductors, PointId from, PointId to) {
        return from.equals(to) ? 0 : -conductors.ofDraw(from, to).along(from, to);
    }

    /** V(return) - V(unit's sensor return) for one ampere of the sensor's own supply current, ohm. */
    private static double ownOhms(SensorLink link, Solution solution, LinearNetwork conductors, PointId back) {
        Optional<PointId> source = link.fed().isPresent()
                ? Optional.of(link.reference())
                : solution.network().datum();
        return source.filter(point -> !point.equals(back) && conductors.together(point, back))
                .map(point -> conductors.ofDraw(point, back).along(back, link.reference()))
                .orElse(0.0);
    }

    private static double amps(Solution solution, SensorLink link, String part) {
        return solution.flow(new BranchId(link.component().id() + "." + part))
                .map(BranchFlow::amps)
                .orElse(0.0);
    }

    private static OptionalDouble between(Solution solution, PointId one, PointId other) {
        OptionalDouble high = solution.volts(one);
        OptionalDouble low = solution.volts(other);
        return high.isPresent() && low.isPresent()
                ? OptionalDouble.of(high.getAsDouble() - low.getAsDouble())
                : OptionalDouble.empty();
    }
}
