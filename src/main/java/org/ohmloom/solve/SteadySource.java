package org.ohmloom.solve;

import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.graph.Sensing;

/**
 * A slow source while its electromotive force is sought.
 *
 * @param branch     its branch
 * @param law        its law as the network has it
 * @param sense      point whose voltage it holds; empty for a battery and for an alternator that holds that of its own terminals
 * @param setPoint   what an alternator holds, with where; empty for a battery
 */
record SteadySource(Branch branch, Law.VoltageSource law, Optional<PointId> sense, Optional<Sensing> setPoint) {

    /** A slow source of a network: an alternator of its sensings or a battery; others are none. */
    static Optional<SteadySource> of(Network network, Branch branch, NetworkSolver solution) {
        if (!(branch.law() instanceof Law.VoltageSource law)) {
            return Optional.empty();
        }
        Optional<Sensing> sensing = network.sensings().stream()
                .filter(each -> each.source().equals(branch.id()))
                .findFirst();
        if (sensing.isPresent()) {
            Optional<PointId> elsewhere = sensing.map(Sensing::sense)
                    .filter(point -> !point.equals(branch.to()))
                    .filter(point -> solution.together(branch.id(), point));
            return Optional.of(new SteadySource(branch, law, elsewhere, sensing));
        }
        return isBattery(law)
                ? Optional.of(new SteadySource(branch, law, Optional.empty(), Optional.empty()))
                : Optional.empty();
    }

    /** Whether a law is that of a battery; minus zero is one that accepts nothing. */
    static boolean isBattery(Law.VoltageSource law) {
        return Double.compare(law.minimumAmps(), 0.0) < 0
                && Double.isInfinite(law.maximumAmps())
                && law.ohms() > 0
                && law.chargeOhms() > 0;
    }

    BranchId id() {
        return branch.id();
    }

    /** Its law within a period at an electromotive force. */
    Law.VoltageSource fast(double emfVolts) {
        double least = setPoint.isPresent() ? 0 : Double.NEGATIVE_INFINITY;
        return new Law.VoltageSource(emfVolts, law.ohms(), least, Double.POSITIVE_INFINITY);
    }

    /** What its means are bound by. */
    MeanLaw mean() {
        return mean(law);
    }

    /** What its means are bound by with another slow law of a battery. */
    MeanLaw mean(Law.VoltageSource slow) {
        return setPoint.isPresent()
                ? new MeanLaw.Regulated(setPoint.get().setPointVolts(), law.maximumAmps())
                : new MeanLaw.Charged(slow, law.ohms());
    }

    /** Mean current and sense voltage of a solution; empty where its part of the network has none. */
    Optional<Reading> read(NetworkSolver solution, double emfVolts) {
        OptionalDouble amps = solution.meanAmps(id());
        if (amps.isEmpty()) {
            return Optional.empty();
        }
        if (sense.isEmpty()) {
            return Optional.of(new Reading(amps.getAsDouble(), emfVolts));
        }
        double negative = solution.meanVolts(id(), branch.from()).orElseThrow();
        double held = solution.meanVolts(id(), sense.get()).orElseThrow();
        return Optional.of(new Reading(amps.getAsDouble(), held - negative));
    }

    /**
     * What is seen of a source.
     *
     * @param amps       mean current it gives, A
     * @param senseVolts mean voltage at its sense point, V; its electromotive force where it holds its own terminals
     */
    record Reading(double amps, double senseVolts) {}
}
