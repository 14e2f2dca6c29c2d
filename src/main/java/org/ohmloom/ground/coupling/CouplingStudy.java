package org.ohmloom.ground.coupling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Islands;
import org.ohmloom.graph.Passages;
import org.ohmloom.graph.PointId;
import org.ohmloom.graph.ReadingUnits;
import org.ohmloom.graph.Route;
import org.ohmloom.ground.sensor.SignalSensitivity;
import org.ohmloom.ground.sensor.Unjudged;
import org.ohmloom.heat.balance.RoundWire;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.ReturnRules;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.solve.Solution;

/**
 * What wires that switch put onto the signals of sensors in the same bundle segments.
 *
 * <p>Two wires are taken to lie side by side, insulation on insulation, wherever they share a segment: the worst they can do. A
 * signal whose return lies in the same bundle takes only the difference between the two, and twisted with it no more than one half
 * twist leaves over.
 *
 * @param couplings worst edge of each pair of wires that puts more than {@link #SHOWN_SHARE} of its limit onto the signal, by signal
 *                  and then by how much arrives
 * @param unjudged  what could not be judged, and what would have to be entered
 */
public record CouplingStudy(List<Coupling> couplings, List<Unjudged> unjudged) {

    /** Less than this share of the limit is not told. */
    public static final double SHOWN_SHARE = 0.05;

    /** Permittivity of insulation and air between wires of a bundle, against empty space. Common practice, no source. */
    public static final double RELATIVE_PERMITTIVITY = 2.5;

    public CouplingStudy {
        couplings = List.copyOf(couplings);
        unjudged = List.copyOf(unjudged);
    }

    /**
     * Studies all states. O(signal wires x switching wires).
     *
     * @param cancelled asked now and then; true stops the work
     * @throws CancellationException when asked to stop
     */
    public static CouplingStudy of(
            CouplingInput input, SortedMap<StateId, Solution> solutions, BooleanSupplier cancelled) {
        List<Victim> victims = victims(input);
        if (victims.isEmpty()) {
            return new CouplingStudy(List.of(), List.of());
        }
        Set<String> unknown = new TreeSet<>();
        Map<String, Coupling> worst = new LinkedHashMap<>();
        solutions.forEach((state, solution) -> {
            Edges edges = Edges.of(input.harness(), solution);
            unknown.addAll(edges.unknown());
            edges.byWire()
                    .forEach((culprit, own) -> own.forEach(edge -> {
                        if (cancelled.getAsBoolean()) {
                            throw new CancellationException("coupling cancelled");
                        }
                        for (Victim victim : victims) {
                            victim.from(input, state, culprit, edge)
                                    .ifPresent(found -> worst.merge(
                                            culprit + " " + victim.wire().id() + " "
                                                    + victim.signal().sensor(),
                                            found,
                                            (one, other) -> other.arrivingVolts() > one.arrivingVolts() ? other : one));
                        }
                    }));
        });
        List<Coupling> couplings = new ArrayList<>(worst.values());
        couplings.removeIf(
                each -> each.arrivingVolts() < SHOWN_SHARE * each.limitVolts().orElse(0));
        couplings.sort(Comparator.comparing(Coupling::sensor)
                .thenComparing(each -> -each.arrivingVolts())
                .thenComparing(Coupling::culprit)
                .thenComparing(Coupling::victim));
        return new CouplingStudy(couplings, unjudged(input, unknown, couplings));
    }

    private static List<Unjudged> unjudged(CouplingInput input, Set<String> unknown, List<Coupling> couplings) {
        List<Unjudged> gaps = new ArrayList<>();
        if (!unknown.isEmpty()) {
            gaps.add(Unjudged.of(
                    Unjudged.Study.COUPLING,
                    Unjudged.Reason.NOT_ENTERED,
                    CouplingTexts.text("unjudged.edge"),
                    unknown));
        }
        if (input.harness().rules().returnRules().heightMetres().isEmpty() && !couplings.isEmpty()) {
            gaps.add(Unjudged.of(
                    Unjudged.Study.COUPLING,
                    Unjudged.Reason.NOT_ENTERED,
                    CouplingTexts.text("unjudged.height"),
                    couplings.stream().map(Coupling::victim).collect(Collectors.toCollection(TreeSet::new))));
        }
        return gaps;
    }

    /** A signal wire with all that says how much it takes up. */
    private record Victim(
            SignalSensitivity signal,
            Wire wire,
            Set<SegmentId> segments,
            List<Wire> returns,
            Guarding guarding,
            double ohms) {

        Optional<Coupling> from(CouplingInput input, StateId state, WireId culprit, Coupling.Edge edge) {
            RoundWire one = input.shapes().get(culprit);
            RoundWire other = input.shapes().get(wire.id());
            double lengthMetres = sharedMetres(input, culprit);
            if (one == null || other == null || lengthMetres == 0 || culprit.equals(wire.id())) {
                return Optional.empty();
            }
            double separation = (one.outsideDiameterMm() + other.outsideDiameterMm()) / 2000;
            ReturnRules rules = input.harness().rules().returnRules();
            double mutualFarads = lengthMetres
                    * CouplingFormulas.pairFaradsPerMetre(
                            separation,
                            one.conductorDiameterMm() / 2000,
                            other.conductorDiameterMm() / 2000,
                            RELATIVE_PERMITTIVITY);
            double groundFarads = rules.heightMetres().isEmpty()
                    ? 0
                    : lengthMetres
                            * CouplingFormulas.planeFaradsPerMetre(
                                    Math.max(rules.heightMetres().getAsDouble(), other.outsideDiameterMm() / 2000),
                                    other.conductorDiameterMm() / 2000,
                                    1);
            double capacitive = guarding.capacitiveShare()
                    * CouplingFormulas.capacitiveVolts(edge.volts(), edge.seconds(), mutualFarads, groundFarads, ohms);
            double inductive = rules.heightMetres().isEmpty() || edge.amps() == 0
                    ? 0
                    : inductive(
                            input,
                            edge,
                            lengthMetres,
                            separation,
                            rules.heightMetres().getAsDouble(),
                            other);
            OptionalDouble filtered = signal.filterHertz().isEmpty()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(filtered(edge, capacitive, inductive, mutualFarads));
            return Optional.of(new Coupling(
                    culprit,
                    wire.id(),
                    state,
                    lengthMetres,
                    separation,
                    capacitive,
                    inductive,
                    capacitive + inductive,
                    filtered,
                    OptionalDouble.of(rules.couplingShare() * signal.allowedVolts()),
                    signal.sensor(),
                    edge,
                    guarding.words()));
        }

        /** The charge of an edge lasts R C after it, so behind the filter no more than 2 pi f R C V of it arrives. */
        private double filtered(Coupling.Edge edge, double capacitive, double inductive, double mutualFarads) {
            double hertz = signal.filterHertz().getAsDouble();
            double charge = 2 * Math.PI * hertz * ohms * mutualFarads * edge.volts() * guarding.capacitiveShare();
            return Math.min(capacitive, charge) + inductive * CouplingFormulas.filteredShare(hertz, edge.seconds());
        }

        private double inductive(
                CouplingInput input,
                Coupling.Edge edge,
                double lengthMetres,
                double separation,
                double height,
                RoundWire shape) {
            double near = CouplingFormulas.mutualHenriesPerMetre(height, height, separation);
            boolean beside = returns.stream().anyMatch(each -> input.routes()
                    .of(each.id())
                    .map(Route::segmentSet)
                    .orElse(Set.of())
                    .containsAll(segments));
            double far = beside || guarding.twistedWithReturn()
                    ? CouplingFormulas.mutualHenriesPerMetre(
                            height, height, separation + shape.outsideDiameterMm() / 1000)
                    : 0;
            double metres = guarding.twistedWithReturn() && guarding.layMetres() > 0
                    ? Math.min(lengthMetres, guarding.layMetres() / 2)
                    : lengthMetres;
            double volts = CouplingFormulas.inductiveVolts((near - far) * metres, edge.amps(), edge.seconds());
            return volts * shieldShare(input, edge, height);
        }

        private double shieldShare(CouplingInput input, Coupling.Edge edge, double height) {
            if (guarding.groundedEnds() < 2) {
                return 1;
            }
            RoundWire shield =
                    input.shapes().get(guarding.shield().orElseThrow().id());
            double millimetres = shield.outsideDiameterMm();
            return CouplingFormulas.shieldShare(
                    CouplingFormulas.edgeHertz(edge.seconds()),
                    shield.ohmsPerMetre(),
                    CouplingFormulas.planeHenriesPerMetre(height, Math.min(millimetres / 1000, 2 * height)));
        }

        private double sharedMetres(CouplingInput input, WireId culprit) {
            double metres = 0;
            for (SegmentId segment :
                    input.routes().of(culprit).map(Route::segmentSet).orElse(Set.of())) {
                if (segments.contains(segment)) {
                    metres += input.harness().segments().get(segment).lengthMetres();
                }
            }
            return metres;
        }
    }

    private static List<Victim> victims(CouplingInput input) {
        Islands pieces = Islands.of(input.drawn(), Branch::isPlain);
        Passages passages = new Passages(input.drawn());
        List<Victim> victims = new ArrayList<>();
        for (SignalSensitivity signal : input.signals()) {
            Optional<PointId> pin = input.drawn().index().terminal(signal.unit(), signal.pin());
            List<Wire> returns = returns(input, passages, signal);
            pin.map(at -> wires(input, pieces, at)).orElse(List.of()).forEach(wire -> input.routes()
                    .of(wire.id())
                    .ifPresent(route -> victims.add(new Victim(
                            signal,
                            wire,
                            new HashSet<>(route.segmentSet()),
                            returns,
                            Guarding.of(input, wire, returns),
                            signal.ohmsAtPin()))));
        }
        return victims;
    }

    /** The wires a signal's current comes back by: those on the shortest way from the sensor's return to the unit's. */
    private static List<Wire> returns(CouplingInput input, Passages passages, SignalSensitivity signal) {
        Optional<PointId> back = input.drawn().index().terminal(signal.sensor(), Sensor.RETURN);
        Optional<PointId> reference = input.harness()
                .components()
                .find(signal.unit())
                .flatMap(unit -> ReadingUnits.reference(input.drawn(), unit.id(), (ControlUnit) unit.device()));
        if (back.isEmpty() || reference.isEmpty()) {
            return List.of();
        }
        return passages.shortest(back.get(), Set.of(reference.get())).stream()
                .filter(branch -> branch.kind() == BranchKind.WIRE)
                .flatMap(branch ->
                        input.harness().wires().find(new WireId(branch.id().value())).stream())
                .toList();
    }

    private static List<Wire> wires(CouplingInput input, Islands pieces, PointId point) {
        int piece = pieces.number(point).orElse(-1);
        List<Wire> wires = new ArrayList<>();
        for (Branch branch : input.drawn().branches().values()) {
            if (branch.kind() == BranchKind.WIRE && pieces.number(branch.from()).orElse(-2) == piece) {
                input.harness().wires().find(new WireId(branch.id().value())).ifPresent(wires::add);
            }
        }
        return wires;
    }
}
