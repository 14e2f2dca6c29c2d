package org.ohmloom.size.protection;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.FeedSource;
import org.ohmloom.graph.FeedWay;
import org.ohmloom.graph.FuseOhms;
import org.ohmloom.heat.ContinuousStates;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Zone;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.words.Text;

/** Puts together all that is known of one protective device, and judges it. */
final class DeviceStudy {
    private final ProtectionInput input;
    private final Relying relying;
    private final FaultStudy faults;
    private final StartStudy starts;
    private final SystemVolts volts;
    private final OutputStudy outputs;
    private final FollowedStarts followed;

    DeviceStudy(
            ProtectionInput input,
            Relying relying,
            FaultStudy faults,
            StartStudy starts,
            SystemVolts volts,
            OutputStudy outputs) {
        this.input = input;
        this.relying = relying;
        this.faults = faults;
        this.starts = starts;
        this.volts = volts;
        this.outputs = outputs;
        this.followed = new FollowedStarts(input.harness(), input.solutions(), input.startUps());
    }

    /**
     * Studies a device in the place of a component: the one that is there, or another. What another resists more does not count
     * against the largest fault: nobody should rely on a fuse's own resistance to stay within what it can break.
     */
    DeviceProtection study(Component component, ProtectiveDevice device, List<ConductorProtection> conductors) {
        ComponentId id = component.id();
        Optional<TimeCurrentBand> band = TimeCurrentBand.of(input.tables(), device);
        ContinuousRating rating =
                ContinuousRating.of(input.tables(), device.series(), device.ratingAmps(), ambientCelsius(component));
        double loadAmps = 0;
        Optional<StateId> loadState = Optional.empty();
        for (StateId state : ContinuousStates.of(input.harness())) {
            double amps = rmsAmps(id, state);
            if (amps > loadAmps) {
                loadAmps = amps;
                loadState = Optional.of(state);
            }
        }
        OptionalDouble cap = outputs.capAmps(id);
        double more = ohms(device) - ohms(relying.device(id).orElse(device));
        double driving = input.harness().rules().nominalVolts();
        Optional<Fault> minimum = faults.minimum(id)
                .map(fault -> fault.withMoreOhms(more, driving).cappedAt(cap));
        Optional<Fault> maximum = faults.maximum(id)
                .map(fault -> fault.withMoreOhms(Math.min(0, more), driving).cappedAt(cap));
        OptionalDouble ratedVolts = VoltageRating.ofDevice(input.tables(), device);
        Optional<CitedValue> listedBreaking = ratedVolts.isPresent()
                ? input.tables()
                        .fuseSeries(device.series())
                        .flatMap(series -> series.breakingAmps(ratedVolts.getAsDouble()))
                : Optional.empty();
        OptionalDouble breaking = device.breakingAmps().isPresent()
                ? device.breakingAmps()
                : listedBreaking.map(value -> OptionalDouble.of(value.value())).orElse(OptionalDouble.empty());
        DeviceProtection found = new DeviceProtection(
                id,
                device.series(),
                device.ratingAmps(),
                band,
                rating,
                loadAmps,
                loadState,
                conductors,
                minimum,
                minimum.isPresent() && band.isPresent()
                        ? band.get().opensWithinSeconds(minimum.get().deviceAmps())
                        : OptionalDouble.empty(),
                FaultNetworks.askedSeconds(input),
                maximum,
                breaking,
                ratedVolts,
                systemVolts(id),
                starts(device, band, rating, loadAmps, id),
                selectivity(id, device, band, maximum),
                List.of());
        return DeviceChecks.judged(
                found,
                device,
                listedBreaking
                        .map(value -> Text.of(value.citation().text()))
                        .orElseGet(() -> CheckTexts.text("source.breaking-entered")));
    }

    /** What a device resists when cold, ohm; 0 when no table says. */
    private double ohms(ProtectiveDevice device) {
        return device.ohms().orElseGet(() -> FuseOhms.of(input.tables())
                .coldOhms(device.series(), device.ratingAmps())
                .map(CitedValue::value)
                .orElse(0.0));
    }

    private double ambientCelsius(Component component) {
        return component
                .zone()
                .map(zone -> input.harness().zones().get(zone))
                .map(Zone::ambientCelsius)
                .orElse(input.harness().rules().ambientCelsius());
    }

    private double rmsAmps(ComponentId device, StateId state) {
        return Optional.ofNullable(input.solutions().get(state))
                .flatMap(solution -> solution.flow(new BranchId(device.value())))
                .map(BranchFlow::rmsAmps)
                .map(Math::abs)
                .orElse(0.0);
    }

    private OptionalDouble systemVolts(ComponentId device) {
        return input.drawn().branch(new BranchId(device.value())).stream()
                .flatMap(branch -> List.of(branch.from(), branch.to()).stream())
                .map(volts::at)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .max();
    }

    /** Each start at its worst: as it was followed over time where it was, otherwise as entered. */
    private List<StartPulse> starts(
            ProtectiveDevice device,
            Optional<TimeCurrentBand> band,
            ContinuousRating rating,
            double loadAmps,
            ComponentId id) {
        if (band.isEmpty()) {
            return List.of();
        }
        SortedMap<ComponentId, List<StartShape>> shapes = new TreeMap<>();
        followed.through(id).forEach((starter, runs) -> {
            if (followed.isUnit(starter)) {
                shapes.put(starter, List.copyOf(runs));
            }
        });
        for (StartStudy.Start start : starts.through(id)) {
            List<FollowedStart> runs = followed.through(id).getOrDefault(start.load(), List.of());
            double first = start.deviceAmps().get(id);
            double others = Math.max(0, loadAmps - start.ratedAmps());
            double running = Math.min(Math.max(loadAmps, start.ratedAmps()), first + others);
            shapes.put(
                    start.load(),
                    runs.isEmpty()
                            ? List.of(new EnteredStart(first + others, running, start.decaySeconds()))
                            : List.copyOf(runs));
        }
        List<StartPulse> pulses = new ArrayList<>();
        shapes.forEach((load, ways) -> ways.stream()
                .map(shape -> StartPulse.of(input.tables(), device.series(), band.get(), rating, load.value(), shape))
                .reduce((one, other) -> one.isWorseThan(other) ? one : other)
                .ifPresent(pulses::add));
        return pulses;
    }

    /** For a device that feeds loads: against the last device before it on the way from each battery, from other sources where there is no battery. */
    private List<Selectivity> selectivity(
            ComponentId id, ProtectiveDevice device, Optional<TimeCurrentBand> band, Optional<Fault> maximum) {
        Map<ComponentId, Selectivity> found = new LinkedHashMap<>();
        BranchId own = new BranchId(id.value());
        input.drawn().branch(own).filter(each -> faults.feedsLoads(own)).ifPresent(branch -> {
            for (FeedSource source : relying.sources(branch.to())) {
                List.of(branch.to(), branch.from()).stream()
                        .flatMap(point -> input.upstream().way(source, point).stream())
                        .filter(way -> way.branches().contains(branch.id()))
                        .findFirst()
                        .flatMap(way -> before(way, branch.id()))
                        .ifPresent(upstream -> found.computeIfAbsent(upstream, other -> {
                            ProtectiveDevice above = relying.device(other).orElseThrow();
                            return Selectivity.of(
                                    other,
                                    device.ratingAmps(),
                                    above.ratingAmps(),
                                    band,
                                    TimeCurrentBand.of(input.tables(), above),
                                    maximum.map(fault -> OptionalDouble.of(fault.deviceAmps()))
                                            .orElse(OptionalDouble.empty()));
                        }));
            }
        });
        return List.copyOf(found.values());
    }

    private Optional<ComponentId> before(FeedWay way, BranchId own) {
        return way.branches().stream()
                .takeWhile(branch -> !branch.equals(own))
                .flatMap(branch -> input.drawn().branch(branch).stream())
                .flatMap(branch -> branch.element().stream())
                .filter(ComponentId.class::isInstance)
                .map(ComponentId.class::cast)
                .filter(each -> relying.device(each).isPresent())
                .reduce((earlier, later) -> later);
    }
}
