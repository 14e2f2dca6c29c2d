package org.ohmloom.solve.run;

import java.util.List;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.model.Draw;
import org.ohmloom.solve.SolveTexts;
import org.ohmloom.solve.WarmNetwork;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * A permanent-magnet motor; its state is the speed n as a share of the rated speed.
 *
 * <p>With R = rated volts / standstill amps and E the back electromotive force at the rated speed, V = R I + E n. What the
 * current leaves over beyond the torque of the driven machine speeds it up: dn/dt = R / (E tau) x (I - I(n)), I(n) the
 * steady current at that speed: the rated current for constant torque, free current + (rated - free) n^2 for a fan or
 * pump. That is J dw/dt = Kt I - M with tau = J R / (Kt Ke); at constant torque the speed approaches its end exponentially
 * with tau.
 *
 * <p>Behind an output with duty D the mean voltage of the winding is D V and the feed carries its current while it is
 * on, so the feed sees (V - E n / D) / (R / D). A motor that is fed all the time and commanded to a share D takes only D of
 * its winding's current from the feed: (V - E n / D) / (R / D^2).
 */
final class RunningUp implements Moving {

    private final BranchId branch;
    private final Draw.MagnetMotor motor;
    private final double dutyFraction;
    private final double windingOverFeed;

    /**
     * A motor.
     *
     * @param branch       its branch
     * @param motor        its numbers
     * @param dutyFraction share of the time it is fed, or the share it is commanded to
     * @param commanded    whether it is fed all the time
     */
    RunningUp(BranchId branch, Draw.MagnetMotor motor, double dutyFraction, boolean commanded) {
        this.branch = branch;
        this.motor = motor;
        this.dutyFraction = dutyFraction;
        this.windingOverFeed = commanded ? 1 / dutyFraction : 1;
    }

    @Override
    public List<BranchId> branches() {
        return List.of(branch);
    }

    @Override
    public double timeConstantSeconds() {
        return motor.startSeconds();
    }

    @Override
    public Manner manner() {
        return Manner.RUNS_UP;
    }

    @Override
    public Text method() {
        String torque = motor.torque() == Draw.MagnetMotor.Torque.CONSTANT
                ? "I(n) = " + Formats.amps(motor.ratedAmps())
                : "I(n) = " + Formats.amps(motor.freeAmps()) + " + "
                        + Formats.amps(motor.ratedAmps() - motor.freeAmps()) + " x n^2";
        return SolveTexts.text(
                dutyFraction < 1 ? "start.running-up-at-duty" : "start.running-up",
                Formats.ohms(motor.windingOhms()),
                Formats.volts(motor.backVolts()),
                Formats.seconds(motor.startSeconds()),
                torque,
                Formats.percent(dutyFraction));
    }

    /** The law at a speed. */
    Law law(double speedShare) {
        double feedOhms = motor.windingOhms() / dutyFraction * windingOverFeed;
        return new Law.BackEmf(feedOhms, motor.backVolts() * Math.max(0, speedShare) / dutyFraction);
    }

    @Override
    public void apply(WarmNetwork network, double seconds, double state) {
        network.set(branch, law(state));
    }

    @Override
    public void switchOff(WarmNetwork network) {
        network.set(branch, new Law.Open());
    }

    @Override
    public double rate(WarmNetwork network, double state) {
        double spareAmps = network.amps(branch) * windingOverFeed - steadyAmps(Math.max(0, state));
        double rate = motor.windingOhms() / (motor.backVolts() * motor.startSeconds()) * spareAmps;
        return state <= 0 ? Math.max(0, rate) : rate;
    }

    private double steadyAmps(double speedShare) {
        return motor.torque() == Draw.MagnetMotor.Torque.CONSTANT
                ? motor.ratedAmps()
                : motor.freeAmps() + (motor.ratedAmps() - motor.freeAmps()) * speedShare * speedShare;
    }

    /**
     * The speed at which it comes to rest at a feed voltage, V: the root of R I(n) + E n = D V, 0 where the torque at
     * standstill does not turn it.
     */
    double steadySpeed(double feedVolts) {
        double volts = dutyFraction * feedVolts - motor.windingOhms() * steadyAmps(0);
        if (volts <= 0) {
            return 0;
        }
        double squareVolts = motor.torque() == Draw.MagnetMotor.Torque.CONSTANT
                ? 0
                : motor.windingOhms() * (motor.ratedAmps() - motor.freeAmps());
        double back = motor.backVolts();
        return 2 * volts / (back + Math.sqrt(back * back + 4 * squareVolts * volts));
    }

    @Override
    public double unrest(WarmNetwork network, double seconds, double state) {
        return Math.abs(rate(network, state)) * motor.startSeconds();
    }

    @Override
    public boolean isStalled(double state) {
        return state < 0.01;
    }
}
