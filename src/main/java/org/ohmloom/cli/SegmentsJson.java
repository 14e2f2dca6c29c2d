package org.ohmloom.cli;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bundle.packing.ConcentricLay;
import org.ohmloom.bundle.section.BundleStudy;
import org.ohmloom.bundle.section.CoveringFit;
import org.ohmloom.bundle.section.DiameterStep;
import org.ohmloom.bundle.section.Member;
import org.ohmloom.bundle.section.SegmentSection;
import org.ohmloom.bundle.section.SupportPlan;
import org.ohmloom.model.WireId;
import org.ohmloom.store.JsonObjectWriter;

/** The bundle segments as the array {@code segments}: what lies in them, how thick they are, what goes over them. */
final class SegmentsJson {

    private SegmentsJson() {}

    static void write(Analysis analysis, JsonObjectWriter root) {
        BundleStudy study = analysis.evidence().bundles();
        root.array("segments", array -> study.bySegment()
                .values()
                .forEach(section -> array.object(item -> section(item, analysis, section))));
        root.put("bundleCopperKg", study.copperKg());
        root.put("bundleMassKg", study.massKg());
    }

    private static void section(JsonObjectWriter item, Analysis analysis, SegmentSection section) {
        item.put("id", section.segment().value());
        item.put(
                "lengthMetres",
                analysis.harness().segments().get(section.segment()).lengthMetres());
        item.put("wires", section.wireCount());
        item.texts("unsized", section.unsized().stream().map(WireId::value).toList());
        item.put("idealMm", section.idealMm());
        item.put("practicalMm", section.practicalMm());
        item.put("finishedMm", section.finishedMm());
        item.objects("steps", section.steps(), SegmentsJson::step);
        item.objects("members", section.members(), SegmentsJson::member);
        item.put("coveringCelsius", section.celsius());
        fit(item, "coveringEntered", section.entered());
        fit(item, "coveringChosen", section.chosen());
        section.lay()
                .ifPresent(lay -> item.objects("layers", lay.layers(), (layer, each) -> layer(each, layer, section)));
        item.put("bendLeastMm", section.bendLeastMm());
        item.put("bendLastingMm", section.bendLastingMm());
        item.put("copperKg", section.copperKg());
        item.put("massKg", section.massKg());
        item.object("supports", each -> supports(each, section.supports()));
    }

    private static void step(DiameterStep step, JsonObjectWriter item) {
        item.put("for", step.words().english());
        item.put("millimetres", step.millimetres());
        item.put("source", step.source());
    }

    private static void member(Member member, JsonObjectWriter item) {
        item.put("id", member.id());
        item.put("xMm", member.disc().xMm());
        item.put("yMm", member.disc().yMm());
        item.put("outsideMm", member.disc().diameterMm());
        item.put("estimated", !member.isListed());
        item.put("source", member.citation().text());
    }

    private static void fit(JsonObjectWriter item, String key, Optional<CoveringFit> fit) {
        if (fit.isEmpty()) {
            item.putNull(key);
            return;
        }
        CoveringFit found = fit.get();
        item.object(key, each -> {
            each.put("size", found.size().id());
            each.put("description", found.size().words());
            each.texts(
                    "problems",
                    found.problems().stream().map(problem -> word(problem)).toList());
            each.put("fillFraction", found.limitFraction() > 0 ? found.fillFraction() : Double.NaN);
            each.put(
                    "limitFraction",
                    found.limitFraction() > 0 ? OptionalDouble.of(found.limitFraction()) : OptionalDouble.empty());
            each.put("limitCelsius", found.size().limitCelsius());
            each.put("metresPerMetre", found.materialMetres());
            each.put("reason", found.words());
            each.put("source", found.size().citation().text());
        });
    }

    private static void layer(JsonObjectWriter item, ConcentricLay.Layer layer, SegmentSection section) {
        item.put("places", layer.places());
        item.texts(
                "members",
                layer.wires().stream().map(k -> section.members().get(k).id()).toList());
        item.put("fillers", layer.fillers());
        item.put("pitchDiameterMm", layer.pitchDiameterMm());
        item.put("outsideMm", layer.outsideMm());
        item.put("layLengthMm", layer.layLengthMm());
        item.put("hand", word(layer.hand()));
    }

    private static void supports(JsonObjectWriter item, SupportPlan plan) {
        item.array("supportMetres", array -> plan.supportMetres().forEach(array::add));
        item.put("spacingMetres", plan.spacingMetres());
        item.put("spacingSource", plan.spacingSource());
        item.array("tieMetres", array -> plan.tieMetres().forEach(array::add));
        item.put("tieSource", plan.tieSource());
    }

    /** A constant as the JSON of the check command writes it: {@code NOT_JOINED} as {@code not-joined}. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
