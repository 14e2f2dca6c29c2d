package org.ohmloom.solve;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.CommonOps_DSCC;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;
import org.ohmloom.analysis.FirstNumbers;
import org.ohmloom.analysis.ShipHarness;
import org.ohmloom.analysis.SolvedBefore;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What the electrical numbers cost as a harness grows, beside the sparse Cholesky factorisation of EJML of the same matrix: the nodal
 * matrix of the largest island of the last state, resistances by their ohms, everything else as 0.01 S, its points in the order in which
 * ours go. (With points in the order of their names the library takes 80 times as long at 1,000 wires, and does not end at 10,000.) What
 * is to be compared is the ratios within one run.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx8g")
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class GrowthBenchmark {

    private static final double WIRE_OHMS = 0.02;
    private static final double OTHER_SIEMENS = 0.01;

    /** From one edited wire to the next: far apart, and not the same ones again. */
    private static final int WIRE_APART = 37;

    /** Count of wires. */
    @Param({"100", "1000", "10000", "100000"})
    public int wires;

    private final SolvedBefore before = new SolvedBefore();
    private int edits;
    private Harness harness;
    private List<Network> states;
    private Circuit circuit;
    private double[] siemens;
    private DMatrixSparseCSC nodal;
    private LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> prepared;

    /** Makes the harness, its networks and the matrix. */
    @Setup
    public void prepare() {
        harness = ShipHarness.ofWires(wires);
        states = harness.states().all().stream()
                .map(state -> NetworkBuilder.build(harness, state, wire -> WIRE_OHMS, WireTables.bundled()))
                .toList();
        Network last = states.get(states.size() - 1);
        IslandPart island = IslandSplit.of(last, last.all()).stream()
                .filter(part -> part.datum().isPresent())
                .max(Comparator.comparingInt(part -> part.branches().size()))
                .orElseThrow();
        circuit = new Circuit(island.datum().orElseThrow(), island.points(), island.branches(), () -> false);
        siemens = circuit.branches().stream()
                .mapToDouble(branch ->
                        branch.law() instanceof Law.Resistance resistance ? 1 / resistance.ohms() : OTHER_SIEMENS)
                .toArray();
        int[] from = circuit.mesh().from();
        int[] to = circuit.mesh().to();
        nodal = nodal(EliminationOrder.of(circuit.points().size(), from, to, () -> false)
                .place());
        prepared = LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
        prepared.setA(nodal.copy());
        prepared.setStructureLocked(true);
    }

    /** The nodal matrix with its points in an order. */
    private DMatrixSparseCSC nodal(int[] place) {
        int points = circuit.points().size();
        DMatrixSparseTriplet entries = new DMatrixSparseTriplet(points, points, 4 * siemens.length);
        for (int branch = 0; branch < siemens.length; branch++) {
            int from = circuit.mesh().from()[branch];
            int to = circuit.mesh().to()[branch];
            from = from < 0 ? from : place[from];
            to = to < 0 ? to : place[to];
            add(entries, from, from, siemens[branch]);
            add(entries, to, to, siemens[branch]);
            add(entries, from, to, -siemens[branch]);
            add(entries, to, from, -siemens[branch]);
        }
        DMatrixSparseCSC matrix = DConvertMatrixStruct.convert(entries, (DMatrixSparseCSC) null);
        CommonOps_DSCC.duplicatesAdd(matrix, null);
        matrix.sortIndices(null);
        return matrix;
    }

    private static void add(DMatrixSparseTriplet entries, int row, int column, double value) {
        if (row >= 0 && column >= 0) {
            entries.addItem(row, column, value);
        }
    }

    /** EJML: pattern and factorisation, with our order, since it has none of its own that keeps trees trees. */
    @Benchmark
    public boolean libraryFactorsAfresh() {
        return LinearSolverFactory_DSCC.cholesky(FillReducing.NONE).setA(nodal.copy());
    }

    /** EJML: the numbers alone, the pattern known. */
    @Benchmark
    public boolean libraryFactorsAgain() {
        return prepared.setA(nodal.copy());
    }

    /** Ours: order and elimination. */
    @Benchmark
    public boolean eliminateAfresh() {
        int[] from = circuit.mesh().from();
        int[] to = circuit.mesh().to();
        return new StarMesh(EliminationOrder.of(circuit.points().size(), from, to, () -> false), from, to)
                .eliminate(siemens);
    }

    /** Ours: the numbers alone, the order known. One conductance differs each time, so that nothing is left out. */
    @Benchmark
    public boolean eliminateAgain() {
        double[] changed = Arrays.copyOf(siemens, siemens.length);
        changed[0] *= 1 + 1e-9 * (System.nanoTime() % 1000);
        return circuit.mesh().eliminate(changed);
    }

    /** All eight states with their relays, duty cycles and regulators, conductors at one temperature, from nothing. */
    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @Measurement(iterations = 3)
    @Warmup(iterations = 2)
    public List<NetworkSolution> eightStates() {
        return states.stream()
                .map(state -> SensedSolver.solve(state, () -> false))
                .toList();
    }

    /** All states heated to agreement, sizes, rules: the first numbers a person sees. */
    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @Measurement(iterations = 3)
    @Warmup(iterations = 2)
    public Object firstNumbers() {
        return FirstNumbers.of(harness);
    }

    /** The first numbers after the size of one wire has changed, begun near those before. */
    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @Measurement(iterations = 3)
    @Warmup(iterations = 2)
    public Object afterAnEdit() {
        edits++;
        WireId wire = List.copyOf(harness.wires().ids())
                .get(WIRE_APART * edits % harness.wires().ids().size());
        harness = SetWireGauge.of(wire, Gauge.metric(edits % 2 == 0 ? 2.5 : 4)).apply(harness);
        return FirstNumbers.of(harness, before);
    }
}
