package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.BooleanSupplier;

/**
 * Solves one island in one moment.
 *
 * <ol>
 *   <li>All loads that hold their power sleep. The rest never draws less at more voltage, so there is a balance, and
 *       {@link Newton} finds it, first with leaky branches, then with {@link Leak#FINAL_SIEMENS}.
 *   <li>Loads that hold their power and see at least {@link DrawnPower#WAKE_VOLTS} wake. From the voltages without them, the
 *       highest there can be, Newton's method comes down upon the upper, stable operating point.
 *   <li>Where it finds none {@link PowerLimit} raises the power step by step, to be sure and to name the cause.
 * </ol>
 *
 * <p>Keeps its last voltages to start from when it is asked again, and takes those of a moment much like this one as a hint;
 * where neither leads anywhere it starts from nothing.
 */
final class IslandSolver {

    /** From this conductance on the last digit of a voltage is a current worth correcting, S. */
    private static final double STIFF_SIEMENS = 1e5;

    private final Circuit circuit;
    private final Newton newton;
    private final Regulation regulation;
    private Optional<PreciseRow> hint;
    private Optional<PreciseRow> lastOpen = Optional.empty();
    private Optional<PreciseRow> lastFull = Optional.empty();
    private Characteristic[] lastAwake = {};
    private Characteristic[] lastHeld = {};

    /**
     * Prepares the solution of a circuit.
     *
     * @param circuit   the circuit
     * @param hint      voltages that may be near, from a moment much like this one
     * @param cancelled asks to stop
     */
    IslandSolver(Circuit circuit, Optional<PreciseRow> hint, BooleanSupplier cancelled) {
        this.hint = hint;
        this.circuit = circuit;
        this.newton = new Newton(circuit, cancelled);
        this.regulation = new Regulation(circuit, newton);
    }

    /** Goes on where the solver of the same circuit with other laws ended: at its voltages, with what was awake and regulated there. */
    IslandSolver(Circuit circuit, IslandSolver like, BooleanSupplier cancelled) {
        this.hint = Optional.empty();
        this.circuit = circuit;
        this.newton = new Newton(circuit, cancelled);
        this.regulation = new Regulation(circuit, newton, like.regulation);
        this.lastOpen = like.lastOpen;
        this.lastFull = like.lastFull;
        this.lastAwake = like.lastAwake;
    }

    /**
     * Solves for the given characteristics, one for each branch of the circuit.
     *
     * @return voltages and currents, or why there are none
     */
    IslandMoment solve(Characteristic[] laws) {
        Characteristic[] fed = Feeding.withoutUnfed(circuit, laws);
        Optional<IslandMoment> again = again(fed);
        if (again.isPresent()) {
            return again.get();
        }
        boolean begun = lastOpen.isPresent() || hint.isPresent();
        IslandMoment found = afresh(fed);
        if (begun && found.failure().isPresent()) {
            forget();
            found = afresh(fed);
        }
        return found;
    }

    /** Begins from nothing: why there is no solution must not hang on where the search for it began. */
    private void forget() {
        hint = Optional.empty();
        lastOpen = Optional.empty();
        lastFull = Optional.empty();
        regulation.forget();
    }

    private IslandMoment afresh(Characteristic[] fed) {
        Characteristic[] sleeping = fed.clone();
        Arrays.setAll(sleeping, each -> fed[each] instanceof DrawnPower ? Asleep.ASLEEP : fed[each]);
        Newton.Result open = search(sleeping);
        if (open.end() != Newton.End.BALANCED) {
            return IslandMoment.failed(Failure.of(circuit, sleeping, open));
        }
        lastOpen = Optional.of(open.volts());
        Characteristic[] awake = Feeding.awake(circuit, fed, open.volts());
        lastAwake = awake;
        if (Arrays.stream(awake).noneMatch(DrawnPower.class::isInstance)) {
            return moment(awake, open.volts());
        }
        Newton.Result full = regulation.settle(awake, lastFull.orElse(open.volts()));
        if (full.end() != Newton.End.BALANCED || PowerLimit.isCollapsed(circuit, awake, full.volts())) {
            lastFull = Optional.empty();
            PowerLimit limit = PowerLimit.find(circuit, regulation, awake, open.volts());
            Optional<PreciseRow> volts =
                    limit.shareFraction() < 1 ? byFreeCharging(awake, open.volts()) : Optional.of(limit.volts());
            if (volts.isEmpty()) {
                return IslandMoment.failed(limit.failure(circuit, awake));
            }
            full = new Newton.Result(Newton.End.BALANCED, volts.get(), 0);
        }
        lastFull = Optional.of(full.volts());
        return moment(awake, full.volts());
    }

    /**
     * Comes down past the voltages at which an alternator gives its limit and a battery takes no more: nothing holds the
     * voltage there, so a load that holds its power cannot rest, and raising the power ends although there is a balance
     * below. With batteries that take any current there is no such gap; from their voltages the true laws settle.
     */
    private Optional<PreciseRow> byFreeCharging(Characteristic[] awake, PreciseRow openVolts) {
        Characteristic[] free = awake.clone();
        Arrays.setAll(free, each -> awake[each] instanceof LimitedSource source ? source.acceptingAny() : awake[each]);
        if (Arrays.equals(free, awake)) {
            return Optional.empty();
        }
        Newton.Result start = regulation.settle(free, openVolts);
        PreciseRow volts = start.volts();
        if (start.end() != Newton.End.BALANCED || PowerLimit.isCollapsed(circuit, free, volts)) {
            PowerLimit limit = PowerLimit.find(circuit, regulation, free, openVolts);
            if (limit.shareFraction() < 1) {
                return Optional.empty();
            }
            volts = limit.volts();
        }
        Newton.Result full = regulation.settle(awake, volts);
        return full.end() == Newton.End.BALANCED && !PowerLimit.isCollapsed(circuit, awake, full.volts())
                ? Optional.of(full.volts())
                : Optional.empty();
    }

    private Newton.Result search(Characteristic[] laws) {
        if (lastOpen.isPresent()) {
            Newton.Result again = regulation.settle(laws, lastOpen.get());
            if (again.end() == Newton.End.BALANCED) {
                return again;
            }
        } else if (hint.isPresent()) {
            Newton.Result again =
                    approach(laws, hint.get(), Leak.STAGES_SIEMENS.subList(1, Leak.STAGES_SIEMENS.size()));
            if (again.end() == Newton.End.BALANCED) {
                return again;
            }
        }
        return approach(laws, circuit.flat(), Leak.STAGES_SIEMENS);
    }

    private Newton.Result approach(Characteristic[] laws, PreciseRow start, List<Double> stagesSiemens) {
        PreciseRow volts = start;
        if (!Arrays.stream(laws).allMatch(Characteristic::isLinear)) {
            Characteristic[] soft = Regulation.softened(laws);
            for (double leakSiemens : stagesSiemens) {
                volts = newton.approach(soft, leakSiemens, volts).volts();
            }
            regulation.guess(soft, volts);
        }
        return regulation.settle(laws, volts);
    }

    /** Goes on from the last voltages where nothing but the size of some draws has changed; empty when more has. */
    private Optional<IslandMoment> again(Characteristic[] fed) {
        if (lastFull.isEmpty()) {
            return Optional.empty();
        }
        Characteristic[] awake = fed.clone();
        for (int branch = 0; branch < fed.length; branch++) {
            if (fed[branch] instanceof DrawnPower power) {
                awake[branch] = lastAwake[branch] instanceof DrawnPower before
                        ? new DrawnPower(power.watts(), before.floorVolts())
                        : Asleep.ASLEEP;
            }
        }
        Newton.Result full = regulation.settle(awake, lastFull.get());
        if (full.end() != Newton.End.BALANCED
                || PowerLimit.isCollapsed(circuit, awake, full.volts())
                || wakes(fed, awake, full.volts())) {
            return Optional.empty();
        }
        lastFull = Optional.of(full.volts());
        return Optional.of(moment(awake, full.volts()));
    }

    /**
     * How the island answers small currents round the moment it has just solved.
     *
     * @param at   the solution of that moment
     * @param kept for each inductive load the current each branch is forced to change by, A
     * @return for each answer the change of each branch's current, A, and voltage, V; empty when there is no telling
     */
    List<RippleFlow> answers(IslandMoment at, SortedMap<Integer, double[]> kept) {
        double[] siemens =
                Balance.quick(circuit, lastHeld, Leak.FINAL_SIEMENS, at.volts()).siemens();
        List<RippleFlow> answers = new ArrayList<>();
        if (!circuit.mesh().eliminate(siemens)) {
            return answers;
        }
        boolean stiff = Arrays.stream(siemens).anyMatch(each -> each > STIFF_SIEMENS);
        kept.forEach((choke, change) -> {
            double[] into = new double[circuit.points().size()];
            for (int branch = 0; branch < change.length; branch++) {
                add(into, circuit.mesh().from()[branch], -change[branch]);
                add(into, circuit.mesh().to()[branch], change[branch]);
            }
            PreciseRow row = new PreciseRow(into.length).plus(1, circuit.mesh().volts(into));
            PreciseRow volts = stiff ? refined(siemens, into, row) : row;
            double[] along = new double[change.length];
            double[] amps = new double[change.length];
            for (int branch = 0; branch < change.length; branch++) {
                along[branch] = volts.difference(
                        circuit.mesh().from()[branch], circuit.mesh().to()[branch]);
                amps[branch] = change[branch] + siemens[branch] * along[branch];
            }
            answers.add(new RippleFlow(choke, 0, amps, along));
        });
        return answers;
    }

    /**
     * The voltages with what their currents still miss corrected once, in {@link Precise} numbers: over next to no resistance the
     * last digit of a double would be a current that shows.
     */
    private PreciseRow refined(double[] siemens, double[] into, PreciseRow row) {
        PreciseRow missing = new PreciseRow(into.length).plus(1, into);
        PreciseRow along = circuit.along(row);
        PreciseRow amps = new PreciseRow(siemens.length);
        for (int branch = 0; branch < siemens.length; branch++) {
            amps.addProduct(branch, along, branch, siemens[branch]);
            missing.subtract(circuit.mesh().from()[branch], amps, branch);
            missing.add(circuit.mesh().to()[branch], amps, branch);
        }
        return row.plus(1, circuit.mesh().volts(missing.values()));
    }

    private static void add(double[] into, int point, double amps) {
        if (point >= 0) {
            into[point] += amps;
        }
    }

    /** Whether a load that was taken to sleep has the voltage to wake. */
    private boolean wakes(Characteristic[] fed, Characteristic[] awake, PreciseRow volts) {
        for (int branch = 0; branch < fed.length; branch++) {
            if (fed[branch] instanceof DrawnPower
                    && awake[branch] == Asleep.ASLEEP
                    && circuit.along(branch, volts).value() >= DrawnPower.WAKE_VOLTS) {
                return true;
            }
        }
        return false;
    }

    /** Solves from now on no more exactly than a search needs, or to the last digit again. */
    void roughly(boolean rough) {
        newton.roughly(rough);
    }

    /** Starts from this moment when it is asked next. */
    void startFrom(IslandMoment near) {
        if (lastFull.isEmpty()) {
            lastOpen = Optional.of(near.volts());
        }
        lastFull = Optional.of(near.volts());
        lastAwake = near.awake();
    }

    private IslandMoment moment(Characteristic[] laws, PreciseRow volts) {
        Characteristic[] held = regulation.held(laws);
        lastHeld = held;
        PreciseRow along = circuit.along(volts);
        PreciseRow amps = new PreciseRow(held.length);
        for (int branch = 0; branch < held.length; branch++) {
            held[branch].amps(along, branch, amps);
            if (laws[branch] instanceof LimitedSource source) {
                limit(source, branch, amps);
            }
        }
        return IdealSources.loop(circuit, held)
                .or(() -> IdealSources.shorted(circuit, held, amps))
                .map(IslandMoment::failed)
                .orElseGet(() -> IslandMoment.solved(volts, amps, laws));
    }

    /** Takes the current of a source never beyond its limits, not even by what a diode leaks. */
    private static void limit(LimitedSource source, int branch, PreciseRow amps) {
        if (amps.value(branch) <= source.minimumAmps()) {
            amps.set(branch, source.minimumAmps());
        } else if (amps.value(branch) >= source.maximumAmps()) {
            amps.set(branch, source.maximumAmps());
        }
    }
}
