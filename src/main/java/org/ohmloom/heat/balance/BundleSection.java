package org.ohmloom.heat.balance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * The steady heat balance of a bundle's cross-section: wires of any sizes and currents in a body of one effective
 * conductivity, which sheds its heat by natural convection and radiation.
 *
 * <p>Where each wire lies in the bundle is not known, so every wire is given the worst place: the middle, with the others
 * around it in rings, the one that makes most heat for its room innermost. Heat from inside and heat made in a ring flow
 * outward through it by the conduction law of a hollow cylinder. To that come the rise across the wire's own insulation, across
 * the covering and from the surface to the air. One wire alone comes out as {@link HeatBalance}.
 *
 * <p>Two constants are fitted, once, to the full-load curve of MIL-W-5088L (src/docs/validation.md): the effective
 * conductivity and how loosely the wires lie. The curves for partial load follow from them: percent of total capacity is
 * then the share of wires that carry their full rating, lying together in the middle.
 */
public final class BundleSection {

    /** Effective heat conductivity of wires and the air between them, W/mK: fitted to MIL-W-5088L. */
    public static final double EFFECTIVE_WATTS_PER_METRE_PER_KELVIN = 0.14;
    /** Diameter over the smallest circle round the wires: fitted to MIL-W-5088L. */
    public static final double LOOSENESS_RATIO = 1.1;
    /** Temperatures agree when none moved by more than this between rounds, K. */
    static final double AGREEMENT_KELVIN = 1e-3;

    private static final int MOST_ROUNDS = 400;
    private static final double LARGEST_FORESEEN_SHARE = 0.6;

    private final List<Bundled> wires;
    private final Cover cover;
    private final OpenAir air;
    private final double diameterMm;
    private final Rings rings;

    /** A bundle of one wire or more. */
    public BundleSection(List<Bundled> wires, Cover cover, OpenAir air) {
        if (wires.isEmpty()) {
            throw new IllegalArgumentException("a bundle needs a wire");
        }
        this.wires = List.copyOf(wires);
        this.cover = cover;
        this.air = air;
        this.diameterMm = diameterMm(this.wires);
        this.rings =
                new Rings(this.wires.stream().mapToDouble(Bundled::squareMm2).toArray());
    }

    /** Diameter of the bundle without its covering, mm: see {@link #packing}. */
    public double diameterMm() {
        return diameterMm;
    }

    private static double diameterMm(List<Bundled> wires) {
        double sum = 0;
        double squares = 0;
        for (Bundled each : wires) {
            sum += each.wire().outsideDiameterMm();
            squares += each.squareMm2();
        }
        return packing(sum * sum / squares) * Math.sqrt(squares);
    }

    /**
     * Bundle diameter over the root of the summed squares of the wires' diameters, for that many wires of equal size (for
     * mixed sizes the square of the sum over the sum of squares): a smooth line through the smallest circles round 2 to
     * 19 equal circles, times the looseness; 1 for one wire.
     */
    static double packing(double count) {
        double two = LOOSENESS_RATIO * (1.15 + 0.27);
        if (count >= 2) {
            return LOOSENESS_RATIO * (1.15 + 0.27 * Math.pow(2 / count, 1.5));
        }
        return 1 + (two - 1) * Math.max(0, count - 1);
    }

    /** Where each wire settles in its worst place, in the order the wires were given. */
    public List<SteadyState> settle() {
        return settle(ambient());
    }

    /** The same, begun from temperatures near those expected, deg C: sooner done. */
    public List<SteadyState> settle(double[] startCelsius) {
        return settle(startCelsius, anyOrder());
    }

    /**
     * The same.
     *
     * @param order the rings in an order near the one expected; brought into the one found
     */
    List<SteadyState> settle(double[] startCelsius, int[] order) {
        if (wires.stream().allMatch(wire -> wire.rmsAmps() == 0)) {
            SteadyState cold = new SteadyState(air.ambientCelsius(), air.ambientCelsius(), 0, false);
            return Collections.nCopies(wires.size(), cold);
        }
        List<SteadyState> states = settle(startCelsius, order, true);
        return states.stream().anyMatch(SteadyState::runaway) ? settle(ambient(), order, false) : states;
    }

    /** Every wire at the temperature of the air, deg C. */
    double[] ambient() {
        double[] ambient = new double[wires.size()];
        Arrays.fill(ambient, air.ambientCelsius());
        return ambient;
    }

    private List<SteadyState> settle(double[] startCelsius, int[] order, boolean leaps) {
        double[] celsius = startCelsius.clone();
        double[] moveBefore = new double[celsius.length];
        Surface surface = cover.over(diameterMm);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double[] heat = heat(celsius);
            double total = Arrays.stream(heat).sum();
            double outside = surface.celsius(total, air);
            double[] next = temperatures(heat, outside + total * cover.kelvinMetresPerWatt(diameterMm), order);
            double[] move = new double[next.length];
            double moved = 0;
            for (int i = 0; i < next.length; i++) {
                move[i] = next[i] - celsius[i];
                moved = Math.max(moved, Math.abs(move[i]));
            }
            boolean melts = Arrays.stream(next).anyMatch(each -> each >= RoundWire.MELTING_CELSIUS);
            if (melts || moved < AGREEMENT_KELVIN || round == MOST_ROUNDS - 1) {
                return states(next, heat, outside, melts || moved >= AGREEMENT_KELVIN);
            }
            celsius = leaps ? leapt(next, move, moveBefore) : next;
            moveBefore = move;
        }
        throw new IllegalStateException("unreachable: the last round returns");
    }

    /**
     * Where the rounds to come would lead if each moved on by the same share of the one before: the sum of that geometric series
     * (Aitken's way). Where a leap would be long nothing is foreseen.
     */
    private static double[] leapt(double[] next, double[] move, double[] moveBefore) {
        double along = 0;
        double before = 0;
        for (int i = 0; i < move.length; i++) {
            along += move[i] * moveBefore[i];
            before += moveBefore[i] * moveBefore[i];
        }
        double share = before == 0 ? 0 : along / before;
        if (Math.abs(share) > LARGEST_FORESEEN_SHARE) {
            return next;
        }
        double[] leapt = new double[next.length];
        for (int i = 0; i < next.length; i++) {
            leapt[i] = next[i] + share / (1 - share) * move[i];
        }
        return leapt;
    }

    /** The rings in the order the wires were given. */
    int[] anyOrder() {
        return rings.anyOrder();
    }

    private List<SteadyState> states(double[] celsius, double[] heat, double outside, boolean runaway) {
        List<SteadyState> states = new ArrayList<>();
        for (int i = 0; i < celsius.length; i++) {
            states.add(new SteadyState(
                    Math.min(RoundWire.MELTING_CELSIUS, celsius[i]),
                    Math.min(RoundWire.MELTING_CELSIUS, outside),
                    heat[i],
                    runaway && heat[i] > 0));
        }
        return states;
    }

    private double[] heat(double[] celsius) {
        double[] heat = new double[wires.size()];
        for (int i = 0; i < heat.length; i++) {
            heat[i] = wires.get(i).wire().heatWattsPerMetre(wires.get(i).rmsAmps(), celsius[i]);
        }
        return heat;
    }

    /** Temperatures in the middle, each wire in turn there, for heats in W per metre and a bundle edge in deg C. */
    private double[] temperatures(double[] heat, double edgeCelsius, int[] order) {
        double[] celsius = rings.riseKelvin(heat, EFFECTIVE_WATTS_PER_METRE_PER_KELVIN, order);
        for (int i = 0; i < celsius.length; i++) {
            celsius[i] += edgeCelsius + heat[i] * wires.get(i).wire().insulationKelvinMetresPerWatt();
        }
        return celsius;
    }
}
