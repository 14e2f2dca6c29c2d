package org.ohmloom.pack.label;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bundle.Diameters;
import org.ohmloom.bundle.packing.CirclePacking;
import org.ohmloom.bundle.section.LabelPlan;
import org.ohmloom.bundle.section.SegmentSection;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Harness;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.LabelSize;
import org.ohmloom.units.Formats;

/**
 * The texts of all labels: each wire at both ends and along it at most every so far, each connector beside it on its branch, each
 * branch, and the harness itself. What is in the vehicle already keeps the marks it has.
 */
public final class LabelTexts {
    private final Analysis analysis;
    private final Harness harness;
    private final Diameters diameters;

    private LabelTexts(Analysis analysis) {
        this.analysis = analysis;
        this.harness = analysis.harness();
        var evidence = analysis.evidence();
        ConductorResistance rows = new ConductorResistance(evidence.tables(), evidence.basis());
        this.diameters = new Diameters(evidence.tables(), harness.rules(), wire -> evidence.rating(wire.id())
                .map(rating -> rows.row(wire, rating.gauge())));
    }

    /** The texts of a harness: wires, connectors, branches, the harness. */
    public static List<LabelText> of(Analysis analysis) {
        LabelTexts texts = new LabelTexts(analysis);
        List<LabelText> all = new ArrayList<>();
        texts.harness.wires().all().forEach(wire -> texts.wire(wire).ifPresent(all::add));
        texts.harness.connectors().all().forEach(connector -> texts.connector(connector)
                .ifPresent(all::add));
        texts.harness.segments().all().forEach(segment -> texts.branch(segment).ifPresent(all::add));
        texts.whole().ifPresent(all::add);
        return all;
    }

    private Optional<LabelText> wire(Wire wire) {
        OptionalDouble length = analysis.routes().lengthMetres(wire);
        if (wire.existing() || length.isEmpty()) {
            return wire.existing()
                    ? Optional.empty()
                    : Optional.of(wire(wire, 2, "both ends; its length is not known"));
        }
        LabelPlan plan = LabelPlan.of(
                wire,
                length.getAsDouble(),
                harness,
                analysis.evidence().tables().fabrication());
        if (plan.metres().isEmpty()) {
            return Optional.empty();
        }
        String places = plan.metres().size() == 1
                ? "in the middle"
                : "both ends"
                        + (plan.metres().size() > 2 ? " and " + (plan.metres().size() - 2) + " between" : "");
        String ways = wire.from().text() + " to " + wire.to().text();
        return Optional.of(wire(wire, plan.metres().size(), ways + ": " + places));
    }

    private LabelText wire(Wire wire, int count, String where) {
        OptionalDouble diameter = diameters
                .of(wire)
                .map(known -> OptionalDouble.of(known.millimetres()))
                .orElse(OptionalDouble.empty());
        String id = wire.id().value();
        return new LabelText(LabelText.Kind.WIRE, id, List.of(id), diameter, count, where);
    }

    private Optional<LabelText> connector(Connector connector) {
        List<Wire> made = harness.wires().all().stream()
                .filter(wire -> !wire.existing()
                        && wire.ends().stream()
                                .anyMatch(end -> end instanceof WireEnd.AtCavity at
                                        && at.connector().equals(connector.id())))
                .toList();
        if (connector.existing() || made.isEmpty()) {
            return Optional.empty();
        }
        Optional<SegmentSection> branch = connector.at().flatMap(at -> alone(at, made));
        OptionalDouble diameter =
                branch.map(section -> OptionalDouble.of(section.finishedMm())).orElseGet(() -> together(made));
        String where = branch.map(section -> "on " + section.segment() + " beside " + connector.id())
                .orElse("on its own wires behind " + connector.id());
        return Optional.of(new LabelText(
                LabelText.Kind.CONNECTOR,
                connector.id().value(),
                List.of(connector.id().value(), connector.name()),
                diameter,
                1,
                where));
    }

    /** The segment at a breakout that holds these wires and no others. */
    private Optional<SegmentSection> alone(BreakoutId breakout, List<Wire> wires) {
        Set<WireId> own = wires.stream().map(Wire::id).collect(Collectors.toSet());
        return harness.segments().all().stream()
                .filter(segment ->
                        segment.from().equals(breakout) || segment.to().equals(breakout))
                .flatMap(segment -> analysis.evidence().bundles().of(segment.id()).stream())
                .filter(section -> own.equals(section.members().stream()
                        .flatMap(member -> member.wires().stream())
                        .collect(Collectors.toSet())))
                .findFirst();
    }

    /** Practical diameter of wires laid together, mm; empty when none has a known diameter. */
    private OptionalDouble together(List<Wire> wires) {
        List<Double> each = wires.stream()
                .flatMap(wire -> diameters.of(wire).stream())
                .map(Diameters.Known::millimetres)
                .toList();
        double lay = harness.rules()
                .fabricationRules()
                .layRatio()
                .orElse(analysis.evidence()
                        .tables()
                        .fabrication()
                        .value("lay-ratio")
                        .value());
        return each.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(CirclePacking.of(each).diameterMm() * (each.size() > 1 ? lay : 1));
    }

    private Optional<LabelText> branch(BundleSegment segment) {
        Optional<SegmentSection> section = analysis.evidence().bundles().of(segment.id());
        boolean made = section.stream()
                .flatMap(each -> each.members().stream())
                .flatMap(member -> member.wires().stream())
                .anyMatch(wire -> !harness.wires().get(wire).existing());
        return made
                ? Optional.of(new LabelText(
                        LabelText.Kind.BRANCH,
                        segment.id().value(),
                        List.of(
                                segment.id().value(),
                                segment.from() + " to " + segment.to(),
                                Formats.metres(segment.lengthMetres())),
                        OptionalDouble.of(section.orElseThrow().finishedMm()),
                        1,
                        "on " + segment.id() + " beside " + segment.from()))
                : Optional.empty();
    }

    /** One label for the harness, on its thickest segment that a label goes round. */
    private Optional<LabelText> whole() {
        TitleBlock title = harness.titleBlock();
        double most = analysis.evidence().tables().fabrication().labels().stream()
                .mapToDouble(LabelSize::mostMm)
                .max()
                .orElse(0);
        return analysis.evidence().bundles().bySegment().values().stream()
                .filter(section -> !section.members().isEmpty() && section.finishedMm() < most)
                .max(Comparator.comparingDouble(SegmentSection::finishedMm))
                .map(section -> new LabelText(
                        LabelText.Kind.HARNESS,
                        title.number(),
                        List.of(title.number() + " rev. " + title.currentRevision(), title.title()),
                        OptionalDouble.of(section.finishedMm()),
                        1,
                        "on " + section.segment()));
    }
}
