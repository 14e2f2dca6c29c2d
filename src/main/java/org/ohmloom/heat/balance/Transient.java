package org.ohmloom.heat.balance;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How a wire's temperature moves in time: copper and insulation as one heat store, losses as in the steady balance.
 *
 * <p>C dT/dt = I2 R(T) - loss(T), with C from {@link HeatStore} and the loss of {@link HeatBalance} at each temperature.
 * Good from about 10 s up; shorter events belong to {@link Adiabatic}. For one thread.
 */
public final class Transient {

    private static final int MOST_PERIODS = 2000;
    private static final int STEPS_OF_TIME_CONSTANT = 20;
    private static final double SLOPE_KELVIN = 0.5;
    private static final int SLICES = 400;
    /** A cycle has settled when its peak moves by less than this from period to period, K. */
    private static final double SETTLED_KELVIN = 1e-4;

    private final RoundWire wire;
    private final double ambientCelsius;
    private final double joulesPerKelvin;
    private final LossCurve losses;

    /** The transient of a wire alone in air. */
    public Transient(HeatBalance balance) {
        this.wire = balance.wire();
        this.ambientCelsius = balance.air().ambientCelsius();
        this.joulesPerKelvin = HeatStore.of(wire).joulesPerKelvin();
        this.losses = new LossCurve(balance);
    }

    /**
     * One stretch of a cycle.
     *
     * @param seconds how long, s, more than 0
     * @param rmsAmps root of the mean square of the current in it, A
     */
    public record Stretch(double seconds, double rmsAmps) {}

    /** Time constant at a conductor temperature, s: heat store over the slope of the losses there, at fixed current heat. */
    public double timeConstantSeconds(double celsius) {
        double above = Math.max(celsius, ambientCelsius + 1);
        return joulesPerKelvin * (above - ambientCelsius) / losses.wattsPerMetre(above);
    }

    /**
     * Temperature after so many seconds of a constant RMS current from a start temperature, deg C: exponential steps along
     * the slope of the balance, twenty to a time constant.
     */
    public double celsiusAfter(double startCelsius, double rmsAmps, double seconds) {
        double celsius = startCelsius;
        double left = seconds;
        while (left > 0 && celsius < RoundWire.MELTING_CELSIUS) {
            double pace = rate(celsius, rmsAmps);
            double slope = (rate(celsius + SLOPE_KELVIN, rmsAmps) - rate(celsius - SLOPE_KELVIN, rmsAmps))
                    / (2 * SLOPE_KELVIN);
            if (slope == 0) {
                slope = -1e-12;
            }
            double settles = -pace / slope;
            if (slope < 0 && Math.abs(settles) < SETTLED_KELVIN / 100) {
                return celsius + settles;
            }
            double step = Math.min(left, 1 / (STEPS_OF_TIME_CONSTANT * Math.abs(slope)));
            celsius += pace * Math.expm1(slope * step) / slope;
            left -= step;
        }
        return Math.min(RoundWire.MELTING_CELSIUS, celsius);
    }

    private double rate(double celsius, double amps) {
        return (wire.heatWattsPerMetre(amps, celsius) - losses.wattsPerMetre(celsius)) / joulesPerKelvin;
    }

    /**
     * How long a constant current takes from one temperature to a higher one.
     *
     * @param fromCelsius start, deg C
     * @param amps        the current, A, not 0
     * @param toCelsius   the temperature asked for, deg C
     */
    public TimeToLimit timeTo(double fromCelsius, double amps, double toCelsius) {
        double adiabatic = Adiabatic.COPPER.seconds(wire.copperAreaMm2(), amps, fromCelsius, toCelsius);
        return new TimeToLimit(lumpedSeconds(fromCelsius, amps, toCelsius), adiabatic);
    }

    /** Simpson's rule over the temperature: t = integral of C dT / (heat - loss). */
    private OptionalDouble lumpedSeconds(double from, double amps, double to) {
        if (to <= from) {
            return OptionalDouble.of(0);
        }
        double width = (to - from) / SLICES;
        double sum = 0;
        for (int i = 0; i <= SLICES; i++) {
            double pace = rate(from + i * width, amps);
            if (pace <= 0) {
                return OptionalDouble.empty();
            }
            int weight = i == 0 || i == SLICES ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight / pace;
        }
        return OptionalDouble.of(sum * width / 3);
    }

    /**
     * The highest temperature a repeated cycle of currents reaches once it has settled, deg C; the melting point of copper
     * when it never settles below.
     *
     * @param stretches    the stretches of one period in order, one at least
     * @param startCelsius a temperature to begin at, best the steady one of the mean square
     */
    public double peakCelsius(List<Stretch> stretches, double startCelsius) {
        double celsius = startCelsius;
        double peak = Double.NEGATIVE_INFINITY;
        for (int period = 0; period < MOST_PERIODS; period++) {
            double highest = celsius;
            double before = celsius;
            for (Stretch stretch : stretches) {
                celsius = celsiusAfter(celsius, stretch.rmsAmps(), stretch.seconds());
                highest = Math.max(highest, celsius);
            }
            boolean settled = Math.abs(celsius - before) < SETTLED_KELVIN;
            peak = highest;
            if (settled || celsius >= RoundWire.MELTING_CELSIUS) {
                break;
            }
        }
        return peak;
    }
}
