package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.PointId;

/** Puts together what is published about what switches. */
final class DutyReport {

    /** Smaller currents are left out of the sampling error: a share of nothing says nothing. */
    private static final double LEAST_RMS_AMPS = 0.1;

    private final FullTrial full;
    private final Trial trial;
    private final SortedMap<BranchId, BranchFlow> flows;

    private DutyReport(FullTrial full, SortedMap<BranchId, BranchFlow> flows) {
        this.full = full;
        this.trial = full.trial();
        this.flows = flows;
    }

    /** The results of the last trial, with the flows published. */
    static DutyResults of(FullTrial full, SortedMap<BranchId, BranchFlow> flows) {
        DutyReport report = new DutyReport(full, flows);
        return new DutyResults(
                full.trial().clocks(),
                full.plan().count(),
                full.plan().isSampled(),
                report.samplingErrorRatio(),
                report.ripples(),
                report.clamps(),
                report.stretchSquares(),
                report.deviations(),
                report.momentVolts());
    }

    private double samplingErrorRatio() {
        double worst = 0;
        for (int island = 0; island < trial.islands().size(); island++) {
            Tally tally = full.tally(island).orElse(null);
            for (int branch = 0;
                    tally != null && branch < tally.circuit().branches().size();
                    branch++) {
                double rms = Math.sqrt(tally.meanSquareAmps(branch));
                if (rms >= LEAST_RMS_AMPS) {
                    worst = Math.max(worst, tally.rmsErrorAmps(branch) / rms);
                }
            }
        }
        return worst;
    }

    private SortedMap<BranchId, Ripple> ripples() {
        SortedMap<BranchId, Ripple> ripples = new TreeMap<>();
        List<Choke> chokes = trial.levels().map(ChokeLevels::chokes).orElse(List.of());
        for (int number = 0; number < chokes.size(); number++) {
            int each = number;
            Choke choke = chokes.get(number);
            boolean broken = full.readings()
                    .map(readings -> readings.chokes().get(each).isBroken())
                    .orElse(false);
            ripples.put(choke.id(), ripple(choke, broken));
        }
        return ripples;
    }

    private Ripple ripple(Choke choke, boolean broken) {
        Optional<Clock> clock = Optional.of(choke.own()).filter(own -> own >= 0).map(own -> trial.clocks()
                .get(own));
        Waveform wave = choke.wave();
        double[] shares = clock.map(Clock::stretches).orElse(List.of()).stream()
                .mapToDouble(Stretch::shareFraction)
                .toArray();
        return new Ripple(
                choke.id(),
                clock.map(Clock::id),
                clock.isPresent() ? wave.meanAmps(shares) : wave.meanAmps(0),
                wave.valleyAmps(),
                wave.peakAmps(),
                choke.emfVolts(),
                choke.speedFraction(),
                !broken,
                broken ? choke.henries() * wave.peakAmps() * wave.peakAmps() / 2 : 0);
    }

    private SortedMap<BranchId, ClampPulse> clamps() {
        SortedMap<BranchId, ClampPulse> clamps = new TreeMap<>();
        for (BranchFlow flow : flows.values()) {
            if (flow.branch().kind() == BranchKind.CLAMP) {
                protectedBy(flow.branch()).ifPresent(output -> {
                    double hertz = Clock.pulse(output.law()).orElseThrow().frequencyHertz();
                    clamps.put(
                            flow.branch().id(),
                            new ClampPulse(flow.branch().id(), output.id(), flow.watts() / hertz, flow.watts()));
                });
            }
        }
        return clamps;
    }

    /** The output that switches between the same two points. */
    private Optional<Branch> protectedBy(Branch clamp) {
        return flows.values().stream()
                .map(BranchFlow::branch)
                .filter(branch -> branch.law() instanceof Law.SwitchedResistance)
                .filter(branch ->
                        branch.from().equals(clamp.from()) && branch.to().equals(clamp.to()))
                .findFirst();
    }

    private Map<BranchId, List<double[]>> deviations() {
        Map<BranchId, List<double[]>> deviations = new HashMap<>();
        for (int island = 0; island < trial.islands().size(); island++) {
            full.recorded(island).ifPresent(recorded -> deviations.putAll(recorded.deviations()));
        }
        return deviations;
    }

    private MomentVolts momentVolts() {
        Map<PointId, float[]> volts = new HashMap<>();
        for (int island = 0; island < trial.islands().size(); island++) {
            full.recorded(island).ifPresent(recorded -> volts.putAll(recorded.volts()));
        }
        return new MomentVolts(volts);
    }

    private Map<BranchId, List<List<Double>>> stretchSquares() {
        Map<BranchId, List<List<Double>>> squares = new HashMap<>();
        if (trial.clocks().isEmpty()) {
            return squares;
        }
        for (int island = 0; island < trial.islands().size(); island++) {
            if (full.tally(island).isPresent() && trial.failure(island).isEmpty()) {
                Tally tally = full.tally(island).get();
                List<Branch> branches = tally.circuit().branches();
                for (int branch = 0; branch < branches.size(); branch++) {
                    squares.put(branches.get(branch).id(), stretchSquares(tally, branch));
                }
            }
        }
        return squares;
    }

    private List<List<Double>> stretchSquares(Tally tally, int branch) {
        List<List<Double>> byClock = new ArrayList<>();
        for (int clock = 0; clock < trial.clocks().size(); clock++) {
            List<Double> byStretch = new ArrayList<>();
            for (int stretch = 0;
                    stretch < trial.clocks().get(clock).stretches().size();
                    stretch++) {
                byStretch.add(tally.meanSquareAmps(branch, clock, stretch));
            }
            byClock.add(List.copyOf(byStretch));
        }
        return List.copyOf(byClock);
    }
}
