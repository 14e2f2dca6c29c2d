package org.ohmloom.analysis;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.BundleLoading;
import org.ohmloom.heat.ChartAmps;
import org.ohmloom.heat.ConductorTemperature;
import org.ohmloom.heat.ContinuousStates;
import org.ohmloom.heat.ShortPeak;
import org.ohmloom.heat.WireHeat;
import org.ohmloom.heat.WireShape;
import org.ohmloom.heat.WireTemperature;
import org.ohmloom.heat.balance.TimeToLimit;
import org.ohmloom.heat.balance.Transient;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.size.ProvisionalSizes;
import org.ohmloom.tables.InsulationType;

/** Gathers for each wire how warm it runs by every way of reckoning. */
final class Temperatures {

    /** The overload shown, as a multiple of what the wire may carry. */
    private static final double OVERLOAD = 2;
    /** A short state that warms a wire by less is not worth a line, K. */
    private static final double LEAST_KELVIN = 0.05;

    private final Bench bench;
    private final ProvisionalSizes sizes;
    private final HeatedSolutions heated;
    private final BundleLoadings loadings;

    Temperatures(Bench bench, ProvisionalSizes sizes, HeatedSolutions heated) {
        this.bench = bench;
        this.sizes = sizes;
        this.heated = heated;
        this.loadings = new BundleLoadings(bench, sizes);
    }

    WireTemperature of(Wire wire) {
        Optional<StateId> state = bench.lasting().stream()
                .max(Comparator.comparingDouble(each -> heat(each, wire).celsius()));
        double ambient = bench.ampacities().ambientCelsius(wire);
        WireHeat heat = state.map(each -> heat(each, wire)).orElseGet(() -> WireHeat.atRest(ambient));
        double amps = state.map(each -> amps(each, wire)).orElse(0.0);
        Optional<Ampacity> ampacity = Optional.ofNullable(heated.ampacities().get(wire.id()));
        WireShape shape = bench.ampacities().shape(wire, sizes.gauge(wire));
        double overloadAmps = OVERLOAD * ampacity.map(Ampacity::limitAmps).orElse(0.0);
        Optional<InsulationType> insulation = bench.ampacities().insulation(wire);
        Transient warming = bench.passingHeat().from(shape.wire(), heat, amps);
        Optional<TimeToLimit> overload = overloadAmps > 0
                ? insulation.map(type -> warming.timeTo(heat.celsius(), overloadAmps, type.maximumCelsius()))
                : Optional.empty();
        BundleLoading loading = state.map(
                        each -> loadings.of(wire, heated.solutions().get(each)))
                .orElse(new BundleLoading(1, 0));
        double altitude = bench.harness().rules().sizingRules().altitudeMetres().orElse(0);
        return new WireTemperature(
                heat,
                state,
                amps,
                tableCelsius(ampacity, amps),
                conservative(ampacity, amps),
                warming.timeConstantSeconds(heat.celsius()),
                overloadAmps,
                overload,
                shortPeak(wire, heat),
                loading,
                insulation.flatMap(type -> ChartAmps.of(
                        bench.tables(),
                        bench.basis(),
                        shape.wire(),
                        ambient,
                        type.maximumCelsius(),
                        loading,
                        altitude)),
                SkinChecks.of(heated.solutions().values(), wire, shape.wire(), heat.celsius()),
                shape.words());
    }

    private WireHeat heat(StateId state, Wire wire) {
        return heated.wireHeat().get(state).get(wire.id());
    }

    private double amps(StateId state, Wire wire) {
        return HeatedSolutions.rmsAmps(heated.solutions().get(state), wire);
    }

    private static OptionalDouble tableCelsius(Optional<Ampacity> ampacity, double amps) {
        return ampacity.filter(each -> each.limitAmps() > 0)
                .map(each -> OptionalDouble.of(ConductorTemperature.celsius(
                        each.ambientCelsius(), each.limitCelsius(), amps, each.limitAmps())))
                .orElse(OptionalDouble.empty());
    }

    /** The aircraft basis's own formula; the other bases have none. */
    private OptionalDouble conservative(Optional<Ampacity> ampacity, double amps) {
        return ampacity.filter(each ->
                        each.limitAmps() > 0 && bench.basis().curveTable().isPresent())
                .map(each -> OptionalDouble.of(ConductorTemperature.conservativeCelsius(
                        each.ambientCelsius(), each.limitCelsius(), Math.abs(amps), each.limitAmps())))
                .orElse(OptionalDouble.empty());
    }

    private Optional<ShortPeak> shortPeak(Wire wire, WireHeat running) {
        return bench.harness().states().all().stream()
                .filter(state -> !bench.lasting().contains(state.id()))
                .max(Comparator.comparingDouble(
                        (OperatingState state) -> heat(state.id(), wire).celsius()))
                .filter(state -> heat(state.id(), wire).celsius() > running.celsius() + LEAST_KELVIN)
                .map(state -> new ShortPeak(
                        state.id(),
                        ContinuousStates.seconds(state),
                        state.durationSeconds().isPresent(),
                        running.celsius(),
                        heat(state.id(), wire).celsius()));
    }
}
