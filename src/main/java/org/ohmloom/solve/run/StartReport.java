package org.ohmloom.solve.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.SolveTexts;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** Makes the result of a run from what was recorded. */
final class StartReport {

    /** Distance from its end, as a share of the way there, at which a current has settled. */
    private static final double SETTLED_SHARE = 0.05;

    /** Share of the smallest start that must go through a protective device for it to be reported. */
    private static final double THROUGH_SHARE = 0.2;

    /** How far off straight lines between the kept instants may be, as a share of the largest value. */
    private static final double THINNING_SHARE = StartUp.SERIES_ERROR_SHARE - Stepper.LINE_ERROR_SHARE;

    private final OperatingState state;
    private final List<Starter> starting;
    private final Probes probes;

    StartReport(OperatingState state, List<Starter> starting, Probes probes) {
        this.state = state;
        this.starting = starting;
        this.probes = probes;
    }

    /** What starts. */
    List<ComponentId> ids() {
        return starting.stream().map(Starter::id).toList();
    }

    /** A start whose first instant has no solution. */
    StartUp collapsed(Text failure, long solutions) {
        List<StarterTrace> traces = starting.stream()
                .map(starter -> new StarterTrace(
                        starter.id(),
                        starter.moving().manner(),
                        starter.moving().method(),
                        starter.moving().timeConstantSeconds(),
                        0,
                        0,
                        0,
                        0,
                        List.of(),
                        List.of()))
                .toList();
        return new StartUp(
                state.id(),
                kind(),
                isCranking(),
                StartUp.Outcome.NO_OPERATING_POINT,
                SolveTexts.text("start.no-first-instant", failure),
                0,
                List.of(),
                traces,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                (int) solutions);
    }

    private StartUp.Kind kind() {
        return starting.size() == 1 ? StartUp.Kind.ONE : StartUp.Kind.TOGETHER;
    }

    private boolean isCranking() {
        return state.mode() == OperatingState.EngineMode.CRANKING;
    }

    /**
     * The result.
     *
     * @param end       how the run ended
     * @param constants time constant of each starter with its feed, s
     * @param before    the values before the start
     * @param sizes     the size of each value
     * @param solutions how often the network was solved
     */
    StartUp of(Stepper.End end, double[] constants, double[] before, double[] sizes, long solutions) {
        Recording recording = end.recording();
        double[] distances = sizes.clone();
        for (int each = 0; each < distances.length; each++) {
            distances[each] *= THINNING_SHARE;
        }
        List<Integer> kept = recording.thinned(distances);
        return new StartUp(
                state.id(),
                kind(),
                isCranking(),
                end.outcome(),
                sentence(end),
                recording.durationSeconds(),
                recording.seconds(kept),
                traces(recording, kept, constants),
                sags(recording, kept, before),
                surges(recording, kept, before),
                dropOuts(recording, before),
                limited(recording),
                (int) solutions);
    }

    private Text sentence(Stepper.End end) {
        String time = Formats.seconds(end.recording().durationSeconds());
        return switch (end.outcome()) {
            case SETTLED -> SolveTexts.text("start.settled", time, Formats.percent(Stepper.REST_SHARE));
            case STALLED -> SolveTexts.text("start.stalled");
            case CUT_OFF -> SolveTexts.text("start.cut-off", time);
            case NO_OPERATING_POINT -> SolveTexts.text(
                    "start.no-operating-point", time, end.failure().orElse(Text.NONE));
        };
    }

    private List<StarterTrace> traces(Recording recording, List<Integer> kept, double[] constants) {
        List<StarterTrace> traces = new ArrayList<>();
        for (int each = 0; each < starting.size(); each++) {
            int amps = 2 * each;
            double peak = recording.largest(amps);
            Moving moving = starting.get(each).moving();
            traces.add(new StarterTrace(
                    starting.get(each).id(),
                    moving.manner(),
                    moving.method(),
                    constants[each],
                    peak,
                    recording.last(amps),
                    recording.lowest(amps + 1),
                    recording.settledSeconds(amps, SETTLED_SHARE * Math.abs(peak - recording.last(amps))),
                    recording.values(kept, amps),
                    recording.values(kept, amps + 1)));
        }
        return traces;
    }

    private List<SupplySag> sags(Recording recording, List<Integer> kept, double[] before) {
        List<SupplySag> sags = new ArrayList<>();
        for (int each = 0; each < probes.supplies().size(); each++) {
            Probes.Supply supply = probes.supplies().get(each);
            int value = Probes.firstSupply(starting.size()) + each;
            if (!ids().contains(supply.id()) && before[value] > 0) {
                OptionalDouble minimum = supply.minimumVolts();
                sags.add(new SupplySag(
                        supply.id(),
                        supply.controlUnit(),
                        before[value],
                        recording.lowest(value),
                        recording.lowestSeconds(value),
                        minimum,
                        minimum.isPresent() ? recording.belowSeconds(value, minimum.getAsDouble()) : 0,
                        minimum.isPresent() && recording.last(value) < minimum.getAsDouble(),
                        supply.holdSeconds(before[value]),
                        recording.values(kept, value)));
            }
        }
        sags.sort(Comparator.comparingDouble(
                sag -> sag.lowestVolts() / sag.minimumVolts().orElse(sag.beforeVolts())));
        return sags;
    }

    private List<DeviceSurge> surges(Recording recording, List<Integer> kept, double[] before) {
        double smallest = Double.POSITIVE_INFINITY;
        for (int each = 0; each < starting.size(); each++) {
            smallest = Math.min(smallest, recording.largest(2 * each));
        }
        List<DeviceSurge> surges = new ArrayList<>();
        for (int each = 0; each < probes.devices().size(); each++) {
            int value = probes.firstDevice(starting.size()) + each;
            if (recording.largest(value) - before[value] > THROUGH_SHARE * smallest) {
                double end = recording.last(value);
                surges.add(new DeviceSurge(
                        probes.devices().get(each).id(),
                        probes.devices().get(each).branch(),
                        before[value],
                        recording.largest(value),
                        end,
                        recording.square(value),
                        Math.max(0, recording.square(value) - end * end * recording.durationSeconds()),
                        recording.values(kept, value)));
            }
        }
        return surges;
    }

    private List<RelayDropOut> dropOuts(Recording recording, double[] before) {
        List<RelayDropOut> dropOuts = new ArrayList<>();
        for (int each = 0; each < probes.coils().size(); each++) {
            Probes.Coil coil = probes.coils().get(each);
            int value = probes.firstCoil(starting.size()) + each;
            if (recording.lowest(value) < coil.dropOutVolts() && before[value] >= coil.dropOutVolts()) {
                dropOuts.add(new RelayDropOut(
                        coil.id(),
                        recording.firstBelowSeconds(value, coil.dropOutVolts()),
                        recording.lowest(value),
                        coil.dropOutVolts()));
            }
        }
        return dropOuts;
    }

    private List<LimitedOutput> limited(Recording recording) {
        List<LimitedOutput> limited = new ArrayList<>();
        for (int each = 0; each < probes.outputs().size(); each++) {
            OutputLimits.Limited output = probes.outputs().get(each);
            int value = probes.firstOutput(starting.size()) + each;
            double limit = output.limit().limitAmps() * Probes.AT_LIMIT_SHARE;
            if (recording.largest(value) >= limit) {
                limited.add(new LimitedOutput(
                        output.component(),
                        output.branch(),
                        output.limit(),
                        recording.durationSeconds() - recording.belowSeconds(value, limit),
                        recording.last(value) >= limit));
            }
        }
        return limited;
    }
}
