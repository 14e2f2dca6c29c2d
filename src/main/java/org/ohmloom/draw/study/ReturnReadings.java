package org.ohmloom.draw.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.function.Predicate;
import org.ohmloom.ground.GroundReading;
import org.ohmloom.ground.LoopReading;
import org.ohmloom.ground.LostReturn;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.ReferencePoint;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.ground.coupling.Coupling;
import org.ohmloom.ground.sensor.SensorBudget;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.StateId;

/** What the study of the return paths says in one state, or at its worst over all of them: one reading for each thing. */
public final class ReturnReadings {

    private ReturnReadings() {}

    /**
     * A ground point in a state.
     *
     * @param ground the ground point
     * @param state  the state
     * @param joint  what passes its joint
     */
    public record AtGround(GroundReading ground, StateId state, GroundReading.JointReading joint) {}

    /** Ground points in the order of their ids, each in the state asked for, or where its offset is largest. */
    public static List<AtGround> grounds(ReturnStudy study, Optional<StateId> state) {
        return grounds(study, ground -> state);
    }

    /** The same, each in a state of its own, or where its offset is largest. */
    public static List<AtGround> grounds(ReturnStudy study, Function<GroundPointId, Optional<StateId>> stateOf) {
        List<AtGround> found = new ArrayList<>();
        for (GroundReading ground : study.grounds()) {
            ground.states().entrySet().stream()
                    .filter(entry -> asked(entry.getKey(), stateOf.apply(ground.ground())))
                    .max(Comparator.comparingDouble(
                            entry -> Math.abs(entry.getValue().offsetVolts())))
                    .ifPresent(entry -> found.add(new AtGround(ground, entry.getKey(), entry.getValue())));
        }
        return found;
    }

    /** Reference points, control units first; each in the state asked for, or where it is farthest from its reference. */
    public static List<Offset> offsets(ReturnStudy study, Optional<StateId> state) {
        return offsets(study, state, offset -> false);
    }

    /** The same; a state in which a reference point is beyond what it is judged by comes before all others. */
    public static List<Offset> offsets(ReturnStudy study, Optional<StateId> state, Predicate<Offset> isOver) {
        List<Offset> worst = worst(
                study.offsets().stream()
                        .filter(offset -> asked(offset.state(), state))
                        .toList(),
                Offset::point,
                Comparator.comparing(isOver::test).thenComparingDouble(Offset::worstVolts));
        worst.sort(Comparator.comparing((Offset offset) -> rank(offset.point().kind()))
                .thenComparing(Comparator.comparingDouble(Offset::worstVolts).reversed()));
        return worst;
    }

    private static int rank(ReferencePoint.Kind kind) {
        return switch (kind) {
            case UNIT_GROUND -> 0;
            case BUS_NODE_GROUND -> 1;
            case SENSOR_RETURN -> 2;
            case GROUND_POINT -> 3;
        };
    }

    /** Sensors, the one with the largest share of its allowed error first; each in the state asked for, or at its worst. */
    public static List<SensorBudget> sensors(ReturnStudy study, Optional<StateId> state) {
        List<SensorBudget> worst = worst(
                study.sensors().stream()
                        .filter(budget -> asked(budget.state(), state))
                        .toList(),
                budget -> budget.sensor() + " " + budget.unit() + " " + budget.pin(),
                Comparator.comparingDouble(ReturnReadings::use));
        worst.sort(Comparator.comparingDouble(ReturnReadings::use).reversed());
        return worst;
    }

    /** Error of a sensor as a share of what is allowed. */
    public static double use(SensorBudget budget) {
        return budget.allowed() > 0 ? budget.worstError() / budget.allowed() : Double.POSITIVE_INFINITY;
    }

    /** Wires that disturb others, the largest voltage first; each pair in the state asked for, or at its worst. */
    public static List<Coupling> couplings(ReturnStudy study, Optional<StateId> state) {
        List<Coupling> worst = worst(
                study.couplings().stream()
                        .filter(coupling -> asked(coupling.state(), state))
                        .toList(),
                coupling -> coupling.culprit() + " " + coupling.victim(),
                Comparator.comparingDouble(ReturnReadings::left));
        worst.sort(Comparator.comparingDouble(ReturnReadings::left).reversed());
        return worst;
    }

    /** The coupled voltage that is left at the end: after the filter, where that is known. */
    public static double left(Coupling coupling) {
        return coupling.filteredVolts().orElse(coupling.volts());
    }

    /** What opens, the most overloaded first; each in the state asked for, or where most happens. */
    public static List<LostReturn> losses(ReturnStudy study, Optional<StateId> state) {
        Comparator<LostReturn> harm = Comparator.comparingDouble(ReturnReadings::overload)
                .thenComparingInt(loss -> loss.fedBackwards().size())
                .thenComparingInt(loss -> loss.dead().size())
                .thenComparingDouble(ReturnReadings::detour);
        List<LostReturn> worst = worst(
                study.losses().stream()
                        .filter(loss -> asked(loss.state(), state))
                        .toList(),
                LostReturn::opened,
                harm);
        worst.sort(harm.reversed());
        return worst;
    }

    private static double overload(LostReturn loss) {
        return loss.overLimit().stream()
                .mapToDouble(each -> each.limitAmps() > 0 ? each.amps() / each.limitAmps() : Double.POSITIVE_INFINITY)
                .max()
                .orElse(0);
    }

    private static double detour(LostReturn loss) {
        return loss.detours().stream()
                .mapToDouble(each -> each.afterAmps() - each.beforeAmps())
                .max()
                .orElse(0);
    }

    /** The state a loop is shown in: the one asked for, that of its stray current, or the one with the largest current. */
    public static Optional<StateId> state(LoopReading loop, Optional<StateId> state) {
        if (state.isPresent()) {
            return state.filter(loop.ampsByState()::containsKey);
        }
        return loop.stray().map(LoopReading.Stray::state).or(() -> loop.ampsByState().entrySet().stream()
                .max(Comparator.comparingDouble(entry -> largest(entry.getValue())))
                .map(Map.Entry::getKey));
    }

    /** The largest of some currents, A. */
    public static double largest(List<Double> amps) {
        return amps.stream().mapToDouble(Math::abs).max().orElse(0);
    }

    private static boolean asked(StateId state, Optional<StateId> wanted) {
        return wanted.isEmpty() || wanted.get().equals(state);
    }

    private static <T> List<T> worst(List<T> all, Function<T, Object> key, Comparator<T> harm) {
        Map<Object, T> found = new LinkedHashMap<>();
        all.forEach(each -> found.merge(key.apply(each), each, BinaryOperator.maxBy(harm)));
        return new ArrayList<>(found.values());
    }
}
