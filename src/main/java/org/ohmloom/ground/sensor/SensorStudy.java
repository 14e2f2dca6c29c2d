package org.ohmloom.ground.sensor;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.Islands;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.Component;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.LinearNetwork;
import org.ohmloom.solve.Solution;

/**
 * How far off every sensor of a harness reads, in every operating state.
 *
 * <p>From the solved voltages at the sensor's terminals and at the unit's pins the circuit of the signal is worked out at several
 * values of the span, ends and middle among them; what the unit takes that for, less the true value, is the error. The parts are
 * brought in one after the other, each being what it adds, so they sum to the whole. A budget is told for the value where the
 * worst error is largest.
 *
 * @param budgets  for each sensor, each input that reads it and each state in which the unit is on
 * @param signals  how much a voltage at the pin matters to each of them
 * @param unjudged what could not be judged, and what would have to be entered
 */
public record SensorStudy(List<SensorBudget> budgets, List<SignalSensitivity> signals, List<Unjudged> unjudged) {

    public SensorStudy {
        budgets = List.copyOf(budgets);
        signals = List.copyOf(signals);
        unjudged = List.copyOf(unjudged);
    }

    /**
     * Studies a harness. O(links x states) small circuits, and one elimination of the conductors for each state.
     *
     * @param harness   the harness
     * @param drawn     its network with nothing switched on
     * @param solutions solution of every state
     * @param cancelled asked now and then; true stops the work
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public static SensorStudy of(
            Harness harness, Network drawn, SortedMap<StateId, Solution> solutions, BooleanSupplier cancelled) {
        List<SensorLink> links = SensorLink.of(harness, drawn);
        Gaps gaps = new Gaps();
        Set<Component> linked = new HashSet<>();
        List<Judge> judges = new ArrayList<>();
        for (SensorLink link : links) {
            linked.add(link.component());
            Optional<Measurement> measurement = link.sensor().measurement();
            if (measurement.isEmpty()) {
                continue;
            }
            ChannelChoice choice = ChannelChoice.of(harness, link, measurement.get());
            choice.channel()
                    .ifPresentOrElse(
                            channel -> judges.add(new Judge(harness, link, measurement.get(), channel)),
                            () -> gaps.add(choice.missing(), link.component().id()));
        }
        unlinked(harness, linked, gaps);
        List<SensorBudget> budgets = new ArrayList<>();
        List<SignalSensitivity> signals = new ArrayList<>();
        SortedMap<StateId, LinearNetwork> conductors = conductors(judges, solutions, cancelled);
        for (Judge judge : judges) {
            if (cancelled.getAsBoolean()) {
                throw new CancellationException("sensors cancelled");
            }
            List<SensorBudget> found = new ArrayList<>();
            conductors.forEach((state, network) ->
                    judge.budget(state, solutions.get(state), network).ifPresent(found::add));
            budgets.addAll(found);
            if (found.isEmpty()) {
                gaps.add(
                        ReadingTexts.text("gap.never-on"),
                        judge.link().component().id());
            } else {
                judge.gaps(gaps);
            }
            signals.add(judge.sensitivity());
        }
        return new SensorStudy(budgets, signals, gaps.all());
    }

    private static void unlinked(Harness harness, Set<Component> linked, Gaps gaps) {
        for (Component component : harness.components().all()) {
            if (component.device() instanceof Sensor sensor) {
                if (sensor.measurement().isEmpty()) {
                    gaps.add(ReadingTexts.text("gap.no-measurement"), component.id());
                } else if (!linked.contains(component)) {
                    gaps.add(ReadingTexts.text("gap.not-read"), component.id());
                }
            }
        }
    }

    /** The conductors of every state that hang together with a sensor or its unit. */
    private static SortedMap<StateId, LinearNetwork> conductors(
            List<Judge> judges, SortedMap<StateId, Solution> solutions, BooleanSupplier cancelled) {
        SortedMap<StateId, LinearNetwork> conductors = new TreeMap<>();
        if (judges.isEmpty()) {
            return conductors;
        }
        Set<PointId> wanted = new HashSet<>();
        judges.forEach(judge -> wanted.addAll(judge.link().points()));
        solutions.forEach((state, solution) -> {
            Islands pieces = Islands.of(solution.network(), Branch::isPlainResistance);
            Set<Integer> numbers = new HashSet<>();
            wanted.forEach(point -> pieces.number(point).ifPresent(numbers::add));
            Collection<PointId> points = new ArrayList<>();
            numbers.stream()
                    .sorted()
                    .forEach(number -> points.addAll(pieces.all().get(number)));
            List<LinearNetwork.Link> links = new ArrayList<>();
            for (Branch branch : solution.network().branches().values()) {
                if (branch.isPlain()
                        && numbers.contains(pieces.number(branch.from()).orElse(-1))
                        && branch.law() instanceof Law.Resistance resistance) {
                    links.add(new LinearNetwork.Link(branch.from(), branch.to(), resistance.ohms(), 0));
                }
            }
            conductors.put(state, LinearNetwork.of(points, links, cancelled));
        });
        return conductors;
    }
}
