package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.Sensing;
import org.ohmloom.solve.SteadySource.Reading;

/**
 * Finds the electromotive forces at which all slow sources of a network have the means their laws ask.
 *
 * <p>Means of currents and voltages are nearly straight in the electromotive forces (quite straight without lamps, constant
 * power and diodes). So the network is solved once, once more for each source that is not content, and a straight model
 * of these solutions tells where all laws hold ({@link StraightModel}); each further solution mends the model (Broyden 1965).
 * A network of straight branches with an alternator and a battery takes four solutions. A model once made also answers for
 * a battery at another charge level, without another solution.
 */
public final class SteadySources {

    /** Laws are held to this, V. */
    static final double HELD_VOLTS = 1e-9;

    /** A current below this is none, A. */
    static final double HELD_AMPS = 1e-9;

    /** Electromotive forces this close to those of a solution, V, lie on the straight model well enough. */
    private static final double STRAIGHT_VOLTS = 0.2;

    private static final int MOST_SOLVES = 30;
    private static final double LEAST_STEP_VOLTS = 0.05;
    private static final double MOST_STEP_VOLTS = 1;

    private final Network network;
    private final SourceMemory memory;
    private final BooleanSupplier cancelled;
    private final List<SteadySource> sources = new ArrayList<>();
    private NetworkSolver latest;
    private Optional<NetworkSolution> solution = Optional.empty();
    private double[] emfVolts;
    private Optional<StraightModel> model = Optional.empty();
    private int solves;

    /**
     * What the slow sources give.
     *
     * @param amps          mean current each gives, A
     * @param terminalVolts mean voltage at the terminals of each, V
     */
    public record Means(Map<BranchId, Double> amps, Map<BranchId, Double> terminalVolts) {
        public Means {
            amps = Map.copyOf(amps);
            terminalVolts = Map.copyOf(terminalVolts);
        }
    }

    private SteadySources(Network network, SourceMemory memory, BooleanSupplier cancelled) {
        this.network = network;
        this.memory = memory;
        this.cancelled = cancelled;
        latest = NetworkSolver.searched(network.withLaws(fastLaws(network, memory)), memory.rest(), cancelled);
        solves = 1;
        for (Branch branch : network.branches().values()) {
            SteadySource.of(network, branch, latest)
                    .filter(source ->
                            source.read(latest, source.law().emfVolts()).isPresent())
                    .ifPresent(sources::add);
        }
        emfVolts = sources.stream()
                .mapToDouble(source -> memory.emfVolts(source.id(), source.law().emfVolts()))
                .toArray();
        model = memory.model(ids());
    }

    private List<BranchId> ids() {
        return sources.stream().map(SteadySource::id).toList();
    }

    /** Laws within a period of all slow sources, at the electromotive forces remembered or those the network has. */
    private static Map<BranchId, Law> fastLaws(Network network, SourceMemory memory) {
        Map<BranchId, Law> laws = new TreeMap<>();
        for (Branch branch : network.branches().values()) {
            if (branch.law() instanceof Law.VoltageSource law) {
                double emf = memory.emfVolts(branch.id(), law.emfVolts());
                if (network.sensings().stream().anyMatch(each -> each.source().equals(branch.id()))) {
                    laws.put(branch.id(), Law.VoltageSource.regulated(emf, law.ohms(), Double.POSITIVE_INFINITY));
                } else if (SteadySource.isBattery(law)) {
                    laws.put(branch.id(), Law.VoltageSource.battery(emf, law.ohms()));
                }
            }
        }
        return laws;
    }

    /**
     * The sources of a network, solved once with each at the electromotive force of its law.
     *
     * @param network   the network
     * @param cancelled asked now and then; true stops a solution with a {@link java.util.concurrent.CancellationException}
     */
    public static SteadySources of(Network network, BooleanSupplier cancelled) {
        return new SteadySources(network, new SourceMemory(), cancelled);
    }

    /** The same, begun where a search in much the same network ended; keeps its own end there. */
    static SteadySources of(Network network, SourceMemory memory, BooleanSupplier cancelled) {
        return new SteadySources(network, memory, cancelled);
    }

    /** How many times the network was solved. */
    int solves() {
        return solves;
    }

    /** The last solution. */
    NetworkSolution solution() {
        if (solution.isEmpty()) {
            solution = Optional.of(latest.result());
        }
        return solution.get();
    }

    /** The electromotive forces of the alternators as laws for the network, their limits kept. */
    Map<BranchId, Law> found() {
        Map<BranchId, Law> laws = new TreeMap<>();
        for (int k = 0; k < emfVolts.length; k++) {
            SteadySource source = sources.get(k);
            laws.put(
                    source.id(), source.setPoint().isPresent() ? source.law().withEmfVolts(emfVolts[k]) : source.law());
        }
        return laws;
    }

    /**
     * What the sources give when their batteries have other laws, as those at another charge level: by the straight model where
     * it was learnt near there, by further solutions where not.
     *
     * @param batteries other laws of batteries; the rest keep theirs
     * @return empty when the network then has no solution
     */
    public Optional<Means> means(Map<BranchId, Law.VoltageSource> batteries) {
        List<MeanLaw> laws = laws(batteries);
        Optional<double[][]> seen = readings();
        if (solved() && seen.isPresent()) {
            boolean learnt = model.isPresent();
            for (int k = 0; k < emfVolts.length; k++) {
                learnt &= content(laws, seen.get(), k)
                        || model.isPresent() && model.get().knows(k);
            }
            if (learnt) {
                double[] there = model.get().solve(emfVolts, seen.get(), laws);
                if (isNear(there)) {
                    return Optional.of(means(there, model.get().at(there, emfVolts, seen.get())));
                }
            }
        }
        return settle(batteries) && solved() ? readings().map(each -> means(emfVolts, each)) : Optional.empty();
    }

    private boolean isNear(double[] there) {
        for (int k = 0; k < there.length; k++) {
            if (Math.abs(there[k] - emfVolts[k]) > STRAIGHT_VOLTS) {
                return false;
            }
        }
        return true;
    }

    private Means means(double[] emf, double[][] seen) {
        Map<BranchId, Double> amps = new TreeMap<>();
        Map<BranchId, Double> terminals = new TreeMap<>();
        for (int k = 0; k < emf.length; k++) {
            amps.put(sources.get(k).id(), seen[k][0]);
            terminals.put(sources.get(k).id(), emf[k] - sources.get(k).law().ohms() * seen[k][0]);
        }
        return new Means(amps, terminals);
    }

    private boolean solved() {
        return solution().islands().stream()
                .filter(Island::powered)
                .allMatch(island -> island.status().compareTo(IslandStatus.SINGULAR) < 0);
    }

    /** Solves until every law holds, the sources' own ones but for the batteries named with another; false when it cannot. */
    boolean settle(Map<BranchId, Law.VoltageSource> batteries) {
        List<MeanLaw> laws = laws(batteries);
        int most = solves + MOST_SOLVES;
        while (solves < most) {
            Optional<double[][]> seen = readings();
            if (seen.isEmpty()) {
                return false;
            }
            if (discontent(laws, seen.get()) < 0) {
                memory.keep(ids(), emfVolts, model);
                return true;
            }
            if (wake(seen.get())) {
                solve();
                continue;
            }
            double[] from = emfVolts;
            emfVolts = next(laws, seen.get());
            solve();
            Optional<double[][]> after = readings();
            if (after.isEmpty()) {
                return false;
            }
            model.get().learn(from, seen.get(), emfVolts, after.get());
        }
        return discontent(laws, readings().get()) < 0;
    }

    /**
     * Raises alternators that give nothing although their sense point is too low: above the voltage they stand at, and as far
     * again as is missing. There is nothing to learn from one at rest.
     */
    private boolean wake(double[][] seen) {
        boolean woken = false;
        for (int k = 0; k < emfVolts.length; k++) {
            SteadySource source = sources.get(k);
            double missing = source.setPoint().map(Sensing::setPointVolts).orElse(0.0) - seen[k][1];
            if (seen[k][0] <= HELD_AMPS && missing > HELD_VOLTS) {
                double stands = -latest.meanDropVolts(source.id());
                emfVolts[k] = Math.max(stands, emfVolts[k]) + 2 * missing;
                woken = true;
            }
        }
        return woken;
    }

    /** Where to solve next: one source moved alone while the model does not know it, then where the model has all content. */
    private double[] next(List<MeanLaw> laws, double[][] seen) {
        if (model.isEmpty()) {
            model = Optional.of(new StraightModel(emfVolts.length));
        }
        for (int k = 0; k < emfVolts.length; k++) {
            if (!model.get().knows(k) && !content(laws, seen, k)) {
                double miss = laws.get(k).missVolts(emfVolts[k], seen[k][0], seen[k][1]);
                double step = Math.min(MOST_STEP_VOLTS, Math.max(LEAST_STEP_VOLTS, 2 * Math.abs(miss)));
                double[] moved = emfVolts.clone();
                moved[k] -= Math.copySign(step, miss);
                return moved;
            }
        }
        return model.get().solve(emfVolts, seen, laws);
    }

    private void solve() {
        Map<BranchId, Law> fast = new TreeMap<>();
        for (int k = 0; k < emfVolts.length; k++) {
            fast.put(sources.get(k).id(), sources.get(k).fast(emfVolts[k]));
        }
        latest = NetworkSolver.searched(network.withLaws(fast), memory.rest(), cancelled);
        solution = Optional.empty();
        solves++;
    }

    private List<MeanLaw> laws(Map<BranchId, Law.VoltageSource> batteries) {
        return sources.stream()
                .map(source -> source.mean(batteries.getOrDefault(source.id(), source.law())))
                .toList();
    }

    /** Current and sense voltage of each source; empty when a part of the network has no solution. */
    private Optional<double[][]> readings() {
        double[][] seen = new double[emfVolts.length][];
        for (int k = 0; k < seen.length; k++) {
            Optional<Reading> reading = sources.get(k).read(latest, emfVolts[k]);
            if (reading.isEmpty()) {
                return Optional.empty();
            }
            seen[k] = new double[] {reading.get().amps(), reading.get().senseVolts()};
        }
        return Optional.of(seen);
    }

    /** The first source whose law does not hold; -1 when all do. */
    private int discontent(List<MeanLaw> laws, double[][] seen) {
        for (int k = 0; k < seen.length; k++) {
            if (!content(laws, seen, k)) {
                return k;
            }
        }
        return -1;
    }

    private boolean content(List<MeanLaw> laws, double[][] seen, int source) {
        return laws.get(source).holds(emfVolts[source], seen[source][0], seen[source][1]);
    }
}
