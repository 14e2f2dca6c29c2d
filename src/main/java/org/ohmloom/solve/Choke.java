package org.ohmloom.solve;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;

/**
 * An inductive load or magnet motor in a network in which something switches: a current that its inductance keeps through
 * each moment, with the level the voltages of the whole period ask for.
 *
 * <p>Its own clock is the one that switches it: through that period its current is a {@link Waveform}, told to the network as
 * the mean of each stretch, with the standard deviation round it as its ripple; where the current dies on the way, as I' for
 * a share of the stretch and 0 for the rest, which have the same mean and mean square. What other clocks do to its voltage
 * its current follows as far as L / R lets it, as a factor on the levels. The voltages come from the network solved with
 * these levels; {@link ChokeLevels} goes round until both agree, which is the balance of volt-seconds.
 */
final class Choke {

    private static final double ONE_SIDED_RATIO = 0.9;
    private static final double FOLLOWS_INERTIA_PERIODS = 2;
    private static final double NO_AMPS = 1e-12;
    private static final int HALVINGS = 60;

    private final BranchId id;
    private final double ohms;
    private final double henries;
    private final Optional<RunningMotor> motor;
    private final List<Clock> clocks;

    /** Direction of its current: 1, or -1 when it is connected the other way round. */
    private final double direction;

    /** Number of the clock that switches it, or -1. */
    private final int own;

    private final double[] shares;
    private final double[] seconds;
    private final double[] amps;
    private final double[] rippleAmps;
    private final double[] cuts;
    private final double[][] factors;
    private double emfVolts;
    private Waveform wave;

    /**
     * A load before its levels are known.
     *
     * @param id        its branch
     * @param law       {@link Law.Inductive} or {@link Law.MagnetMotor}
     * @param clocks    all clocks
     * @param own       number of the clock that switches it, -1 for none
     * @param direction 1, or -1 when its current runs against its branch
     */
    Choke(BranchId id, Law law, List<Clock> clocks, int own, double direction) {
        this.id = id;
        this.clocks = clocks;
        this.own = own;
        this.direction = direction;
        if (law instanceof Law.MagnetMotor magnet) {
            ohms = magnet.ohms();
            henries = magnet.henries();
            motor = Optional.of(new RunningMotor(magnet));
        } else {
            Law.Inductive inductive = (Law.Inductive) law;
            ohms = inductive.ohms();
            henries = inductive.henries();
            motor = Optional.empty();
        }
        shares = own < 0
                ? new double[] {1}
                : clocks.get(own).stretches().stream()
                        .mapToDouble(Stretch::shareFraction)
                        .toArray();
        double period = own < 0 ? henries / ohms : clocks.get(own).periodSeconds();
        seconds = new double[shares.length];
        for (int stretch = 0; stretch < shares.length; stretch++) {
            seconds[stretch] = shares[stretch] * period;
        }
        amps = new double[shares.length];
        rippleAmps = new double[shares.length];
        cuts = new double[shares.length];
        factors = new double[clocks.size()][];
    }

    /**
     * Whether a load follows its clock so slowly switched that only its running point counts: a motor that runs up and
     * down within the period.
     */
    static boolean isQuasiStatic(Law law, Clock clock) {
        return law instanceof Law.MagnetMotor magnet
                && clock.periodSeconds() > FOLLOWS_INERTIA_PERIODS * magnet.runUpSeconds();
    }

    /**
     * Takes the levels that voltages ask for.
     *
     * @param driveVolts voltage in each stretch of its own clock without its current, V
     * @param sourceOhms fall of that voltage with its current, ohm
     * @param otherVolts for each other clock by how much its stretches differ from the mean voltage, V
     */
    void settle(double[] driveVolts, double[] sourceOhms, double[][] otherVolts) {
        Waveform.Winding winding = new Waveform.Winding(seconds, driveVolts, sourceOhms, ohms, henries);
        emfVolts = motor.map(each -> running(each, winding)).orElse(0.0);
        wave = Waveform.of(winding, emfVolts);
        for (int stretch = 0; stretch < shares.length; stretch++) {
            tell(stretch);
        }
        double mean = wave.meanAmps(shares);
        double meanVolts = emfVolts + ohms * mean;
        for (int clock = 0; clock < clocks.size(); clock++) {
            factors[clock] = clock == own || mean <= NO_AMPS
                    ? new double[0]
                    : follow(clocks.get(clock), otherVolts[clock], mean, meanVolts);
        }
    }

    /** The counter-voltage at which the mean current is what the load on the shaft asks for. */
    private double running(RunningMotor magnet, Waveform.Winding winding) {
        double full = magnet.law().emfVolts();
        double most = 0;
        for (double volts : winding.driveVolts()) {
            most = Math.max(most, volts);
        }
        if (full <= 0 || tooWeak(magnet, winding, 0)) {
            return 0;
        }
        double low = 0;
        double high = most / full;
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (low + high) / 2;
            if (tooWeak(magnet, winding, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return full * (low + high) / 2;
    }

    private boolean tooWeak(RunningMotor magnet, Waveform.Winding winding, double speed) {
        return Waveform.of(winding, magnet.law().emfVolts() * speed).meanAmps(shares) <= magnet.atSpeed(speed);
    }

    /** Tells the waveform of a stretch: its level, its ripple, and how much of the stretch it lasts. */
    private void tell(int stretch) {
        double mean = wave.meanAmps(stretch);
        double square = wave.squareAmps2(stretch);
        double sigma = Math.sqrt(Math.max(0, square - mean * mean));
        if (wave.isInterrupted(stretch) || sigma > ONE_SIDED_RATIO * mean) {
            cuts[stretch] = square > 0 ? mean * mean / square : 1;
            amps[stretch] = mean > 0 ? square / mean : 0;
            rippleAmps[stretch] = 0;
        } else {
            cuts[stretch] = 1;
            amps[stretch] = mean;
            rippleAmps[stretch] = wave.isRising(stretch) ? sigma : -sigma;
        }
    }

    /** The factor on its levels in each stretch of another clock. */
    private double[] follow(Clock clock, double[] volts, double meanAmps, double meanVolts) {
        double following = ohms;
        if (motor.isPresent() && isQuasiStatic(motor.get().law(), clock)) {
            double siemens = motor.get().siemens(Precise.of(meanVolts));
            following = siemens > 0 ? 1 / siemens : Double.POSITIVE_INFINITY;
        }
        double[] factor = new double[volts.length];
        double[] raised = new double[volts.length];
        double[] length = new double[volts.length];
        double bias = 0;
        for (double each : volts) {
            bias = Math.max(bias, 2 * Math.abs(each));
        }
        for (int stretch = 0; stretch < factor.length; stretch++) {
            factor[stretch] = 1;
            raised[stretch] = volts[stretch] + bias;
            length[stretch] = clock.stretches().get(stretch).shareFraction() * clock.periodSeconds();
        }
        if (bias == 0 || Double.isInfinite(following)) {
            return factor;
        }
        // the filter is linear: the bias keeps the current from reaching 0 and is taken off again
        Waveform filtered =
                Waveform.of(new Waveform.Winding(length, raised, new double[factor.length], following, henries), 0);
        for (int stretch = 0; stretch < factor.length; stretch++) {
            factor[stretch] = Math.max(0, 1 + (filtered.meanAmps(stretch) - bias / following) / meanAmps);
        }
        return factor;
    }

    /** Its current in a moment, A, 0 or more, in its own direction. */
    double levelAmps(List<Part> at) {
        if (own < 0) {
            return wave.meanAmps(0) * factor(at);
        }
        Part part = at.get(own);
        return part.placeFraction() < cuts[part.stretch()] ? amps[part.stretch()] * factor(at) : 0;
    }

    /**
     * Standard deviation of its current round the level of a moment, A, in the direction of its branch; of what rises together
     * the sign is the same.
     */
    double rippleAmps(List<Part> at) {
        return own < 0 ? 0 : direction * rippleAmps[at.get(own).stretch()] * factor(at);
    }

    /** How many standard deviations above its level its current peaks in a moment. */
    double peakRatio(List<Part> at) {
        int stretch = own < 0 ? 0 : at.get(own).stretch();
        double peak = wave.isRising(stretch) ? wave.endAmps(stretch) : wave.startAmps(stretch);
        return rippleAmps[stretch] == 0 ? 0 : Math.max(0, (peak - amps[stretch]) / Math.abs(rippleAmps[stretch]));
    }

    private double factor(List<Part> at) {
        double product = 1;
        for (int clock = 0; clock < factors.length; clock++) {
            if (factors[clock].length > 0) {
                product *= factors[clock][at.get(clock).stretch()];
            }
        }
        return product;
    }

    /** What it is in a moment. */
    Characteristic characteristic(List<Part> at) {
        double level = levelAmps(at);
        Characteristic law = level > NO_AMPS ? new KeptCurrent(level) : new Rectifier(emfVolts, ohms);
        return direction < 0 ? new Turned(law) : law;
    }

    /** Where a stretch of its own clock is cut, as a share of the stretch; 1 for not at all. */
    double cut(int stretch) {
        return cuts[stretch];
    }

    /** Its branch. */
    BranchId id() {
        return id;
    }

    /** Number of the clock that switches it, or -1. */
    int own() {
        return own;
    }

    /** 1, or -1 when its current runs against its branch. */
    double direction() {
        return direction;
    }

    /** Count of stretches of its own clock. */
    int stretches() {
        return shares.length;
    }

    /** Counter-voltage, V. */
    double emfVolts() {
        return emfVolts;
    }

    /** Speed over rated speed of a motor. */
    OptionalDouble speedFraction() {
        return motor.isPresent() && motor.get().law().emfVolts() > 0
                ? OptionalDouble.of(emfVolts / motor.get().law().emfVolts())
                : OptionalDouble.empty();
    }

    /** Resistance of its winding, ohm. */
    double ohms() {
        return ohms;
    }

    /** Inductance of its winding, H. */
    double henries() {
        return henries;
    }

    /** Its current through a period of its own clock. */
    Waveform wave() {
        return wave;
    }
}
