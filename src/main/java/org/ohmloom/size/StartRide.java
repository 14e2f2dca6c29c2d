package org.ohmloom.size;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Load;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.size.protection.ContinuousRating;
import org.ohmloom.size.protection.EnteredStart;
import org.ohmloom.size.protection.FollowedStarts;
import org.ohmloom.size.protection.StartPulse;
import org.ohmloom.size.protection.StartShape;
import org.ohmloom.size.protection.TimeCurrentBand;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.run.StartUps;

/**
 * Which rating rides through the starts behind a device: as they were followed over time, and where one was not, as it is
 * entered, with the start current at the rated voltage, which the real one does not exceed by much, and all else the device
 * carries.
 */
final class StartRide {

    private record Start(ComponentId load, double peakAmps, double ratedAmps, double decaySeconds) {}

    private final SizingFacts facts;
    private final FollowedStarts followed;
    private final Map<ComponentId, List<Start>> starts = new HashMap<>();

    StartRide(SizingFacts facts, StartUps startUps) {
        this.facts = facts;
        this.followed = new FollowedStarts(facts.harness(), facts.input().solutions(), startUps);
        Map<ComponentId, Map<ComponentId, Start>> found = new HashMap<>();
        for (Solution solution : facts.input().solutions().values()) {
            for (LoadVolts volts : solution.loads().values()) {
                start(volts.load()).ifPresent(start -> volts.feedPath().forEach(branch -> device(solution, branch)
                        .ifPresent(device -> found.computeIfAbsent(device, id -> new HashMap<>())
                                .put(volts.load(), start))));
            }
        }
        found.forEach((device, byLoad) -> starts.put(device, new ArrayList<>(byLoad.values())));
    }

    private Optional<ComponentId> device(Solution solution, BranchId branch) {
        return solution.flow(branch)
                .flatMap(flow -> flow.branch().element())
                .filter(ComponentId.class::isInstance)
                .map(ComponentId.class::cast)
                .filter(id -> facts.device(id).isPresent());
    }

    private Optional<Start> start(ComponentId id) {
        return facts.harness()
                .components()
                .find(id)
                .map(component -> component.device())
                .filter(Load.class::isInstance)
                .map(Load.class::cast)
                .flatMap(load -> start(id, load));
    }

    private static Optional<Start> start(ComponentId id, Load load) {
        double rated = load.draw().ratedAmps();
        if (load.inrush().isPresent()) {
            return Optional.of(new Start(
                    id,
                    load.inrush().get().peakAmps(),
                    rated,
                    load.inrush().get().decaySeconds()));
        }
        return load.draw() instanceof Draw.MagnetMotor motor
                ? Optional.of(new Start(id, motor.startAmps(), rated, motor.startSeconds()))
                : Optional.empty();
    }

    /** Whether a rating, A, rides through every start behind a device; true where no opening times are published. */
    boolean rides(ComponentId id, ProtectiveDevice device, double ratingAmps, double loadAmps, double ambientCelsius) {
        return worst(id, device, ratingAmps, loadAmps, ambientCelsius)
                .map(StartPulse::ridesThrough)
                .orElse(true);
    }

    /** The start that tries it most, at a rating. */
    Optional<StartPulse> worst(
            ComponentId id, ProtectiveDevice device, double ratingAmps, double loadAmps, double ambientCelsius) {
        Optional<TimeCurrentBand> band = TimeCurrentBand.of(facts.input().tables(), device.series(), ratingAmps);
        if (band.isEmpty()) {
            return Optional.empty();
        }
        ContinuousRating rating =
                ContinuousRating.of(facts.input().tables(), device.series(), ratingAmps, ambientCelsius);
        return shapes(id, loadAmps).entrySet().stream()
                .flatMap(entry -> entry.getValue().stream()
                        .map(shape -> StartPulse.of(
                                facts.input().tables(),
                                device.series(),
                                band.get(),
                                rating,
                                entry.getKey().value(),
                                shape)))
                .reduce((one, other) -> one.isWorseThan(other) ? one : other);
    }

    /** The starts through a device, by what starts: followed where they were, otherwise as entered. */
    private SortedMap<ComponentId, List<StartShape>> shapes(ComponentId id, double loadAmps) {
        SortedMap<ComponentId, List<StartShape>> shapes = new TreeMap<>();
        for (Start start : starts.getOrDefault(id, List.of())) {
            double others = Math.max(0, loadAmps - start.ratedAmps());
            shapes.put(
                    start.load(),
                    List.of(new EnteredStart(
                            start.peakAmps() + others,
                            Math.min(Math.max(loadAmps, start.ratedAmps()), start.peakAmps() + others),
                            start.decaySeconds())));
        }
        followed.through(id).forEach((starter, runs) -> {
            if (shapes.containsKey(starter) || followed.isUnit(starter)) {
                shapes.put(starter, List.copyOf(runs));
            }
        });
        return shapes;
    }
}
