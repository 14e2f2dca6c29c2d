package org.ohmloom.solve.envelope;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.PointId;
import org.ohmloom.graph.Sensing;
import org.ohmloom.solve.LinearNetwork;

/**
 * Every current and voltage as a sum over what takes current, while the sources stand at given pieces: the closed network's
 * own response to its sources plus, for each taker, its amperes times the response to one ampere drawn there.
 *
 * <p>A source on its line is an electromotive force with a resistance; one at its most or least current is that current. The
 * pieces are right for the combinations that keep {@link #conditions}; each must not be negative.
 */
final class LinearModel {
    private final ClosedNetwork closed;
    private final SourceMode mode;
    private final List<Taker> takers;
    private final LinearNetwork.Response base;
    private final List<LinearNetwork.Response> held = new ArrayList<>();
    private final List<Double> heldAmps = new ArrayList<>();
    private final List<LinearNetwork.Response> draws = new ArrayList<>();
    private final Map<BranchId, LinearNetwork.Link> lines = new HashMap<>();
    private Optional<Sensed> sensed = Optional.empty();
    private final double[] openVolts;
    private final double[][] transferOhms;

    /** The source with a sense point: its response, and its current as a sum. */
    private record Sensed(int number, LinearNetwork.Response response, Functional amps) {}

    private LinearModel(ClosedNetwork closed, SourceMode mode, List<Taker> takers, LinearNetwork network) {
        this.closed = closed;
        this.mode = mode;
        this.takers = takers;
        base = network.ofSources();
        for (int number = 0; number < closed.sources().size(); number++) {
            Branch source = closed.sources().get(number);
            SourceMode.Piece piece = mode.pieces().get(number);
            if (isLine(piece)) {
                lines.put(source.id(), ClosedNetwork.line(source, piece == SourceMode.Piece.CHARGED));
            } else if (piece != SourceMode.Piece.SENSED) {
                held.add(network.ofDraw(source.from(), source.to()));
                heldAmps.add(heldAmps(number));
            }
        }
        takers.forEach(taker -> draws.add(network.ofDraw(taker.from(), taker.to())));
        int sensedNumber = mode.pieces().indexOf(SourceMode.Piece.SENSED);
        if (sensedNumber >= 0) {
            sensed = Optional.of(sensed(sensedNumber, network));
        }
        openVolts = new double[takers.size()];
        transferOhms = new double[takers.size()][takers.size()];
        for (int row = 0; row < takers.size(); row++) {
            Functional own = volts(takers.get(row).from(), takers.get(row).to());
            openVolts[row] = own.constant();
            for (int column = 0; column < takers.size(); column++) {
                transferOhms[row][column] = -own.perAmp(column);
            }
        }
    }

    private static boolean isLine(SourceMode.Piece piece) {
        return piece == SourceMode.Piece.LINE || piece == SourceMode.Piece.CHARGED;
    }

    /** The current that brings the sense point to the set point, whatever is taken. */
    private Sensed sensed(int number, LinearNetwork network) {
        Branch source = closed.sources().get(number);
        Sensing sensing = closed.sensing(source).orElseThrow();
        LinearNetwork.Response response = network.ofDraw(source.from(), source.to());
        Functional withoutIt = volts(sensing.sense(), source.from());
        double perAmp = response.along(sensing.sense(), source.from());
        return new Sensed(number, response, Functional.plus(sensing.setPointVolts() / perAmp, withoutIt, -1 / perAmp));
    }

    /** A model; empty where sources at their limits leave nothing that holds a voltage between a taker's terminals. */
    static Optional<LinearModel> of(
            ClosedNetwork closed, SourceMode mode, List<Taker> takers, BooleanSupplier cancelled) {
        List<LinearNetwork.Link> links = new ArrayList<>(closed.links().values());
        for (int number = 0; number < closed.sources().size(); number++) {
            SourceMode.Piece piece = mode.pieces().get(number);
            if (isLine(piece)) {
                links.add(ClosedNetwork.line(closed.sources().get(number), piece == SourceMode.Piece.CHARGED));
            }
        }
        LinearNetwork network = LinearNetwork.of(closed.network().points(), links, cancelled);
        boolean held = takers.stream().allMatch(taker -> network.together(taker.from(), taker.to()))
                && closed.sources().stream().allMatch(source -> network.together(source.from(), source.to()))
                && closed.sources().stream().allMatch(source -> closed.sensing(source)
                        .filter(each -> !network.together(each.sense(), source.from()))
                        .isEmpty());
        return held ? Optional.of(new LinearModel(closed, mode, takers, network)) : Optional.empty();
    }

    private double heldAmps(int number) {
        Law.VoltageSource law = (Law.VoltageSource) closed.sources().get(number).law();
        return mode.pieces().get(number) == SourceMode.Piece.MOST ? law.maximumAmps() : law.minimumAmps();
    }

    private double constant(PointId from, PointId to) {
        double volts = base.along(from, to);
        for (int each = 0; each < held.size(); each++) {
            volts += heldAmps.get(each) * held.get(each).along(from, to);
        }
        return volts;
    }

    /** V(from) - V(to). */
    Functional volts(PointId from, PointId to) {
        double[] perAmp = new double[draws.size()];
        for (int taker = 0; taker < perAmp.length; taker++) {
            perAmp[taker] = draws.get(taker).along(from, to);
        }
        Functional plain = new Functional(constant(from, to), perAmp);
        return sensed.map(each -> with(each, plain, from, to)).orElse(plain);
    }

    private static Functional with(Sensed sensed, Functional plain, PointId from, PointId to) {
        double perSensedAmp = sensed.response.along(from, to);
        double[] perAmp = new double[plain.takers()];
        for (int taker = 0; taker < perAmp.length; taker++) {
            perAmp[taker] = plain.perAmp(taker) + perSensedAmp * sensed.amps.perAmp(taker);
        }
        return new Functional(plain.constant() + perSensedAmp * sensed.amps.constant(), perAmp, perSensedAmp);
    }

    private Functional amps(LinearNetwork.Link link) {
        Functional along = volts(link.from(), link.to());
        return Functional.plus(link.emfVolts() / link.ohms(), along, 1 / link.ohms());
    }

    /** Current of a branch, {@code from} to {@code to}; empty for one that never conducts. */
    Optional<Functional> amps(Branch branch) {
        for (int number = 0; number < closed.sources().size(); number++) {
            if (closed.sources().get(number).id().equals(branch.id())) {
                return Optional.of(sourceAmps(number));
            }
        }
        for (int taker = 0; taker < takers.size(); taker++) {
            if (takers.get(taker).id().equals(branch.id())) {
                double[] perAmp = new double[takers.size()];
                perAmp[taker] = 1;
                return Optional.of(new Functional(0, perAmp));
            }
        }
        return Optional.ofNullable(closed.links().get(branch.id())).map(this::amps);
    }

    private Functional sourceAmps(int number) {
        if (sensed.filter(each -> each.number == number).isPresent()) {
            Functional amps = sensed.get().amps;
            return new Functional(amps.constant(), perAmps(amps), 1);
        }
        LinearNetwork.Link line = lines.get(closed.sources().get(number).id());
        return line == null ? new Functional(heldAmps(number), new double[takers.size()]) : amps(line);
    }

    private static double[] perAmps(Functional of) {
        double[] perAmp = new double[of.takers()];
        Arrays.setAll(perAmp, of::perAmp);
        return perAmp;
    }

    /** What must not be negative for the sources to stand at these pieces. */
    List<Functional> conditions() {
        List<Functional> conditions = new ArrayList<>();
        for (int number = 0; number < closed.sources().size(); number++) {
            Branch source = closed.sources().get(number);
            Law.VoltageSource law = (Law.VoltageSource) source.law();
            Functional amps = sourceAmps(number);
            SourceMode.Piece piece = mode.pieces().get(number);
            boolean twoLines = SourceMode.hasChargeLine(law);
            switch (piece) {
                case LINE, SENSED, CHARGED -> {
                    double most = piece == SourceMode.Piece.CHARGED ? 0 : law.maximumAmps();
                    double least = piece == SourceMode.Piece.LINE && twoLines ? 0 : law.minimumAmps();
                    if (Double.isFinite(most)) {
                        conditions.add(Functional.plus(most, amps, -1));
                    }
                    if (Double.isFinite(least)) {
                        conditions.add(Functional.plus(-least, amps, 1));
                    }
                }
                case MOST -> conditions.add(shortfall(source, law, law.ohms() * law.maximumAmps()));
                case LEAST -> conditions.add(shortfall(source, law, law.chargeOhms() * law.minimumAmps())
                        .negated());
            }
        }
        return conditions;
    }

    /** How far a source's voltage stays below what its law asks at a current that loses some V inside. */
    private Functional shortfall(Branch source, Law.VoltageSource law, double insideVolts) {
        return closed.sensing(source)
                .map(each -> Functional.plus(each.setPointVolts(), volts(each.sense(), source.from()), -1))
                .orElseGet(() -> Functional.plus(law.emfVolts() - insideVolts, volts(source.to(), source.from()), -1));
    }

    List<Taker> takers() {
        return takers;
    }

    /** Voltage of each taker while none takes anything, V. */
    double[] openVolts() {
        return openVolts;
    }

    /** How far one ampere of the second taker lowers the voltage of the first, ohm. */
    double[][] transferOhms() {
        return transferOhms;
    }

    /** Whether the current of each taker passes no carrier but its own, and the sources alone drive none through any. */
    boolean isRadial() {
        for (BranchId carrier : closed.carriers()) {
            LinearNetwork.Link link = closed.links().get(carrier);
            if (link == null) {
                continue;
            }
            Functional amps = amps(link);
            if (Math.abs(amps.constant()) > NeedsSearch.CARRIED_RATIO) {
                return false;
            }
            for (int taker = 0; taker < takers.size(); taker++) {
                boolean own = takers.get(taker).needs().carriers().contains(carrier);
                if (!own && Math.abs(amps.perAmp(taker)) > NeedsSearch.CARRIED_RATIO) {
                    return false;
                }
            }
        }
        return true;
    }
}
