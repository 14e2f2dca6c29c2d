package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;

/**
 * The levels of all inductive loads and supply capacitors: what they are in each moment, and the search for those at
 * which volt-seconds and ampere-seconds balance.
 *
 * <p>The unknowns are voltages: for each inductive load what drives it in each stretch of its own clock and by how much each
 * stretch of every other clock moves that; for each capacitor its own. One pass over all moments turns them into those
 * they cause; {@link Anderson} finds the ones that cause themselves.
 */
final class ChokeLevels {

    private static final double SWITCHES_RATIO = 0.3;
    private static final double MOVES_RATIO = 1e-9;

    private final List<Clock> clocks;
    private final List<Choke> chokes = new ArrayList<>();
    private final List<Reservoir> reservoirs = new ArrayList<>();
    private final Map<BranchId, Integer> chokeOf = new HashMap<>();
    private final Map<BranchId, Integer> reservoirOf = new HashMap<>();
    private final double[][] sourceOhms;
    private final int[] reservoirAt;
    private final Anderson anderson = new Anderson();
    private final List<Branch> stores;
    private final double scaleVolts;
    private double[] unknowns;

    /** Reads one pass over the moments in which inductive loads were their running points and capacitors not there. */
    ChokeLevels(List<Branch> stores, Map<BranchId, ClockReading> resting, List<Clock> clocks) {
        this.clocks = clocks;
        this.stores = List.copyOf(stores);
        double largest = 1;
        for (ClockReading each : resting.values()) {
            largest = Math.max(largest, each.largest());
        }
        scaleVolts = largest;
        for (Branch branch : stores) {
            if (branch.law() instanceof Law.SupplyCapacitor law) {
                reservoirOf.put(branch.id(), reservoirs.size());
                reservoirs.add(new Reservoir(branch.id(), law, clocks));
            } else {
                choke(branch, resting.get(branch.id())).ifPresent(choke -> {
                    chokeOf.put(branch.id(), chokes.size());
                    chokes.add(choke);
                });
            }
        }
        int size = 0;
        for (Choke choke : chokes) {
            size += choke.stretches() + steps(choke);
        }
        reservoirAt = new int[reservoirs.size()];
        for (int number = 0; number < reservoirAt.length; number++) {
            reservoirAt[number] = size;
            size += reservoirs.get(number).size();
        }
        unknowns = new double[size];
        sourceOhms = new double[chokes.size()][];
        start(resting);
    }

    /** The same levels with a search that remembers none of its steps. */
    private ChokeLevels(ChokeLevels before) {
        clocks = before.clocks;
        stores = before.stores;
        scaleVolts = before.scaleVolts;
        chokes.addAll(before.chokes);
        reservoirs.addAll(before.reservoirs);
        chokeOf.putAll(before.chokeOf);
        reservoirOf.putAll(before.reservoirOf);
        sourceOhms = before.sourceOhms;
        reservoirAt = before.reservoirAt;
        unknowns = before.unknowns.clone();
        settle();
    }

    /** These levels to begin another search with; these themselves are of no use after that. */
    ChokeLevels begunAnew() {
        return new ChokeLevels(this);
    }

    /** Whether these are the levels of such loads and capacitors on such clocks. */
    boolean isOf(List<Branch> others, List<Clock> otherClocks) {
        return stores.equals(others) && clocks.equals(otherClocks);
    }

    /** The largest voltage along one of them with inductive loads at their running points, V, at least 1. */
    double scaleVolts() {
        return scaleVolts;
    }

    /** An inductive load that has to be followed through the period; empty when nothing that switches moves it. */
    private Optional<Choke> choke(Branch branch, ClockReading volts) {
        int own = -1;
        boolean moves = false;
        for (int clock = 0; clock < clocks.size(); clock++) {
            double range = volts.range(clock);
            moves |= range > MOVES_RATIO * volts.largest();
            if (range > SWITCHES_RATIO * volts.largest()
                    && (own < 0
                            || clocks.get(clock).frequencyHertz()
                                    > clocks.get(own).frequencyHertz())) {
                own = clock;
            }
        }
        if (!moves || own >= 0 && Choke.isQuasiStatic(branch.law(), clocks.get(own))) {
            return Optional.empty();
        }
        return Optional.of(new Choke(branch.id(), branch.law(), clocks, own, volts.mean() < 0 ? -1 : 1));
    }

    private int steps(Choke choke) {
        int steps = 0;
        for (int clock = 0; clock < clocks.size(); clock++) {
            steps += clock == choke.own() ? 0 : clocks.get(clock).stretches().size();
        }
        return steps;
    }

    private void start(Map<BranchId, ClockReading> resting) {
        int place = 0;
        for (int number = 0; number < chokes.size(); number++) {
            Choke choke = chokes.get(number);
            sourceOhms[number] = new double[choke.stretches()];
            ClockReading volts = resting.get(choke.id());
            for (int stretch = 0; stretch < choke.stretches(); stretch++) {
                unknowns[place++] =
                        choke.direction() * (choke.own() < 0 ? volts.mean() : volts.mean(choke.own(), stretch));
            }
            for (int clock = 0; clock < clocks.size(); clock++) {
                for (double step : clock == choke.own() ? new double[0] : volts.deviations(clock)) {
                    unknowns[place++] = choke.direction() * step;
                }
            }
        }
        for (int number = 0; number < reservoirAt.length; number++) {
            reservoirs.get(number).start(resting.get(reservoirs.get(number).id()), unknowns, reservoirAt[number]);
        }
        settle();
    }

    private void settle() {
        int place = 0;
        for (int number = 0; number < chokes.size(); number++) {
            Choke choke = chokes.get(number);
            double[] drive = new double[choke.stretches()];
            System.arraycopy(unknowns, place, drive, 0, drive.length);
            place += drive.length;
            double[][] others = new double[clocks.size()][0];
            for (int clock = 0; clock < clocks.size(); clock++) {
                if (clock != choke.own()) {
                    others[clock] = new double[clocks.get(clock).stretches().size()];
                    System.arraycopy(unknowns, place, others[clock], 0, others[clock].length);
                    place += others[clock].length;
                }
            }
            choke.settle(drive, sourceOhms[number], others);
        }
    }

    /** The parts of each clock for the present levels. */
    List<List<Part>> parts() {
        List<List<Part>> parts = new ArrayList<>();
        for (int number = 0; number < clocks.size(); number++) {
            int clock = number;
            parts.add(Part.of(clocks.get(clock), stretch -> {
                TreeSet<Double> cuts = new TreeSet<>();
                chokes.stream().filter(choke -> choke.own() == clock).forEach(choke -> cuts.add(choke.cut(stretch)));
                return cuts;
            }));
        }
        return parts;
    }

    /** What a branch is in a moment; empty when it is no inductive load in motion and no capacitor. */
    Optional<Characteristic> characteristic(BranchId branch, List<Part> at) {
        Integer choke = chokeOf.get(branch);
        if (choke != null) {
            return Optional.of(chokes.get(choke).characteristic(at));
        }
        Integer reservoir = reservoirOf.get(branch);
        return reservoir == null
                ? Optional.empty()
                : Optional.of(reservoirs.get(reservoir).characteristic(at, unknowns, reservoirAt[reservoir]));
    }

    /** Whether there is anything to search for. */
    boolean isEmpty() {
        return chokes.isEmpty() && reservoirs.isEmpty();
    }

    /** The inductive loads in motion. */
    List<Choke> chokes() {
        return chokes;
    }

    /** The supply capacitors. */
    List<Reservoir> reservoirs() {
        return reservoirs;
    }

    /** A reading of each load and capacitor for one pass. */
    LevelReadings readings() {
        return new LevelReadings(chokes, reservoirs, clocks);
    }

    /**
     * Takes what a pass has shown.
     *
     * @return by how much the voltages missed those they cause, V
     */
    double move(LevelReadings readings) {
        double[] moved = unknowns.clone();
        double missVolts = 0;
        int place = 0;
        for (int number = 0; number < chokes.size(); number++) {
            Choke choke = chokes.get(number);
            ChokeReading reading = readings.chokes().get(number);
            for (int stretch = 0; stretch < choke.stretches(); stretch++) {
                double ohms = reading.sourceOhms(stretch);
                missVolts = Math.max(
                        missVolts,
                        Math.abs(ohms - sourceOhms[number][stretch])
                                * choke.wave().meanAmps(stretch));
                sourceOhms[number][stretch] = ohms;
                moved[place] = reading.driveVolts(stretch, ohms, unknowns[place]);
                place++;
            }
            for (int clock = 0; clock < clocks.size(); clock++) {
                for (double step : clock == choke.own() ? new double[0] : reading.deviations(clock)) {
                    moved[place++] = step;
                }
            }
        }
        for (int number = 0; number < reservoirAt.length; number++) {
            reservoirs.get(number).move(readings.reservoirs().get(number), unknowns, moved, reservoirAt[number]);
        }
        for (int each = 0; each < moved.length; each++) {
            missVolts = Math.max(missVolts, Math.abs(moved[each] - unknowns[each]));
        }
        unknowns = anderson.next(unknowns, moved);
        settle();
        return missVolts;
    }
}
