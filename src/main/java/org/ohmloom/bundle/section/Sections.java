package org.ohmloom.bundle.section;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.bundle.BundleCounts;
import org.ohmloom.bundle.Diameters;
import org.ohmloom.bundle.packing.CirclePacking;
import org.ohmloom.bundle.packing.ConcentricLay;
import org.ohmloom.bundle.packing.CrossSection;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Covering;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.model.Zone;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.FabricationTables;
import org.ohmloom.words.Text;

/**
 * Makes the cross-sections of all segments: what lies in them is packed, the packing grows by lay, splices and margin to the
 * practical diameter, and coverings are held against that.
 */
public final class Sections {
    private final BundleInput input;
    private final FabricationTables tables;
    private final FabricationRules rules;
    private final Contents contents;
    private final CrossingSplices splices;
    private final CoveringFitting fitting;
    private final Map<List<Double>, CrossSection> packed = new HashMap<>();

    private Sections(BundleInput input) {
        this.input = input;
        this.tables = input.tables().fabrication();
        this.rules = input.harness().rules().fabricationRules();
        Diameters diameters = new Diameters(input.tables(), input.harness().rules(), input.rows());
        this.contents = new Contents(input, diameters);
        this.splices = new CrossingSplices(input, diameters);
        this.fitting = new CoveringFitting(tables);
    }

    /** The cross-sections of a harness. Safe on any thread. */
    public static BundleStudy of(BundleInput input) {
        Sections sections = new Sections(input);
        BundleCounts counts = BundleCounts.of(input.harness(), input.routes());
        SortedMap<SegmentId, SegmentSection> bySegment = new TreeMap<>();
        for (BundleSegment segment : input.harness().segments().all()) {
            List<Wire> wires = counts.in(segment.id()).stream()
                    .map(input.harness().wires()::get)
                    .toList();
            bySegment.put(segment.id(), sections.section(segment, wires));
        }
        return new BundleStudy(bySegment, new TreeMap<>());
    }

    private SegmentSection section(BundleSegment segment, List<Wire> wires) {
        List<WireId> unsized = wires.stream()
                .filter(wire -> input.rows().of(wire).isEmpty())
                .map(Wire::id)
                .toList();
        List<Contents.Round> rounds = contents.of(wires);
        List<Double> diameters = rounds.stream().map(Contents.Round::outsideMm).toList();
        CrossSection ideal = packing(diameters);
        List<Member> members = new ArrayList<>();
        for (int k = 0; k < rounds.size(); k++) {
            members.add(rounds.get(k).at(ideal.discs().get(k)));
        }
        Optional<ConcentricLay> lay = segment.layLengthMm().isPresent() && !diameters.isEmpty()
                ? Optional.of(ConcentricLay.of(diameters, segment.layLengthMm().getAsDouble()))
                : Optional.empty();
        List<DiameterStep> steps = growth(segment, diameters, ideal, lay);
        double practicalMm = steps.isEmpty() ? 0 : steps.get(steps.size() - 1).millimetres();
        double celsius = ambientCelsius(segment)
                + wires.stream().mapToDouble(input.riseKelvins()).max().orElse(0);
        CoveringFitting.Bundle bundle = new CoveringFitting.Bundle(
                members.size(),
                diameters.stream()
                        .mapToDouble(each -> Math.PI / 4 * each * each)
                        .sum(),
                practicalMm,
                celsius);
        Optional<Covering> covering = segment.covering().filter(each -> !members.isEmpty());
        Optional<CoveringFit> entered = covering.flatMap(each -> each.size()
                .flatMap(tables::findCovering)
                .filter(size -> size.kind().equals(each.kind().name()))
                .map(size -> fitting.fit(bundle, size, each.overlapFraction())));
        Optional<CoveringFit> chosen =
                covering.flatMap(each -> fitting.choose(bundle, each.kind(), each.overlapFraction()));
        double finishedMm =
                entered.or(() -> chosen).map(CoveringFit::finishedMm).orElse(practicalMm);
        Masses masses = new Masses(input, tables);
        double copperKg = masses.copperKg(wires, segment.lengthMetres());
        return new SegmentSection(
                segment.id(),
                members,
                ideal.diameterMm(),
                steps,
                practicalMm,
                finishedMm,
                unsized,
                celsius,
                entered,
                chosen,
                lay,
                tables.value("bend-least").value() * finishedMm,
                tables.value("bend-lasting").value() * finishedMm,
                copperKg,
                copperKg
                        + masses.insulationKg(wires, rounds, segment.lengthMetres())
                        + masses.coveringKg(entered.or(() -> chosen), practicalMm, segment.lengthMetres()),
                supports(segment, members.size(), covering.isPresent(), finishedMm));
    }

    private List<DiameterStep> growth(
            BundleSegment segment, List<Double> diameters, CrossSection ideal, Optional<ConcentricLay> lay) {
        List<DiameterStep> steps = new ArrayList<>();
        if (diameters.isEmpty()) {
            return steps;
        }
        double now = ideal.diameterMm();
        steps.add(new DiameterStep(BundleTexts.text("diameter.ideal"), now, BundleTexts.text("diameter.search")));
        if (lay.isPresent()) {
            now = lay.get().diameterMm();
            steps.add(new DiameterStep(
                    BundleTexts.text("diameter.twisted", lay.get().words()), now, BundleTexts.text("diameter.layers")));
        } else if (diameters.size() > 1) {
            now = grown(steps, now, "diameter.by-hand", rules.layRatio().orElse(-1), "lay-ratio");
        }
        List<Double> crowded = splices.mostCrowded(segment);
        if (!crowded.isEmpty()) {
            List<Double> all = new ArrayList<>(diameters);
            all.addAll(crowded);
            double growth = packing(all).diameterMm() / ideal.diameterMm();
            now *= growth;
            CitedValue ratio = tables.value("splice-ratio");
            steps.add(new DiameterStep(
                    crowded.size() == 1
                            ? BundleTexts.text("diameter.one-splice")
                            : BundleTexts.text("diameter.splices", crowded.size()),
                    now,
                    BundleTexts.text(
                            "diameter.packed",
                            String.valueOf(ratio.value()),
                            ratio.citation().text())));
        }
        if (diameters.size() > 1) {
            grown(steps, now, "diameter.margin", rules.marginRatio().orElse(-1), "margin-ratio");
        }
        return steps;
    }

    private double grown(List<DiameterStep> steps, double before, String key, double asked, String item) {
        CitedValue usual = tables.value(item);
        double ratio = asked > 0 ? asked : usual.value();
        double after = before * ratio;
        Text source = asked > 0
                ? BundleTexts.text("diameter.rules")
                : Text.of(usual.citation().text());
        steps.add(new DiameterStep(BundleTexts.text(key, ratio), after, source));
        return after;
    }

    private CrossSection packing(List<Double> diameters) {
        return packed.computeIfAbsent(diameters, CirclePacking::of);
    }

    private double ambientCelsius(BundleSegment segment) {
        return segment.zone()
                .map(input.harness().zones()::get)
                .map(Zone::ambientCelsius)
                .orElse(input.harness().rules().ambientCelsius());
    }

    private SupportPlan supports(BundleSegment segment, int members, boolean covered, double finishedMm) {
        boolean boat = input.basis().startsWith("33-cfr") || input.basis().startsWith("abyc");
        CitedValue usual = tables.value(boat ? "support-spacing-small-craft" : "support-spacing");
        double spacing = rules.supportSpacingMetres().orElse(usual.value());
        CitedValue tie = tables.tieSpacing(finishedMm).spacingMm();
        boolean tied = members > 1 && !covered;
        return new SupportPlan(
                members == 0 ? List.of() : SupportPlan.spread(segment.lengthMetres(), spacing),
                spacing,
                rules.supportSpacingMetres().isPresent()
                        ? "design rules of the harness"
                        : usual.citation().text(),
                members < 2
                        ? List.of()
                        : tied
                                ? SupportPlan.spread(segment.lengthMetres(), tie.value() / 1000)
                                : SupportPlan.atEnds(segment.lengthMetres()),
                tied ? tie.citation().text() : SupportPlan.besideBreakouts(tie.citation()));
    }
}
