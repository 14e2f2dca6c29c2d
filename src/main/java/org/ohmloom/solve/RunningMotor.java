package org.ohmloom.solve;

import org.ohmloom.graph.Law;

/**
 * A permanent-magnet motor at its running point: the speed at which the current the voltage drives is the current its load
 * asks for.
 *
 * <p>V = R I + E n. A fan: I = I0 + (I1 - I0) n^2, so R (I1 - I0) n^2 + E n - (V - R I0) = 0. A constant torque: I = I1 once R I1
 * is exceeded. Below the voltage that turns it, and turned the wrong way, it is its resistance.
 *
 * @param law the motor
 */
record RunningMotor(Law.MagnetMotor law) implements Characteristic {

    @Override
    public Precise amps(Precise volts) {
        double at = volts.value();
        if (at <= law.ohms() * turningAmps()) {
            return volts.dividedBy(law.ohms());
        }
        double speed = speedFraction(at);
        return law.speedSquared() ? Precise.of(atSpeed(speed)) : Precise.of(law.ratedAmps());
    }

    @Override
    public double siemens(Precise volts) {
        double at = volts.value();
        if (at <= law.ohms() * turningAmps()) {
            return 1 / law.ohms();
        }
        if (!law.speedSquared() || law.ratedAmps() <= law.freeAmps()) {
            return 0;
        }
        double loadAmps = law.ratedAmps() - law.freeAmps();
        double speed = speedFraction(at);
        double steep = 2 * law.ohms() * loadAmps * speed + law.emfVolts();
        return steep > 0 ? 2 * loadAmps * speed / steep : 1 / law.ohms();
    }

    /** Speed over rated speed at a voltage, V. */
    double speedFraction(double volts) {
        double over = volts - law.ohms() * turningAmps();
        if (over <= 0) {
            return 0;
        }
        double square = law.speedSquared() ? law.ohms() * (law.ratedAmps() - law.freeAmps()) : 0;
        double emf = law.emfVolts();
        // the root of square n^2 + emf n = over, without cancellation; a motor without either never finds a speed
        double root = Math.sqrt(emf * emf + 4 * square * over);
        return emf + root > 0 ? 2 * over / (emf + root) : 0;
    }

    /** Current its load asks for at a speed, A. */
    double atSpeed(double speedFraction) {
        return law.speedSquared()
                ? law.freeAmps() + (law.ratedAmps() - law.freeAmps()) * speedFraction * speedFraction
                : law.ratedAmps();
    }

    private double turningAmps() {
        return law.speedSquared() ? law.freeAmps() : law.ratedAmps();
    }
}
