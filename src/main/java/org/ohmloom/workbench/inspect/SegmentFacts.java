package org.ohmloom.workbench.inspect;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.bundle.packing.ConcentricLay;
import org.ohmloom.bundle.section.CoveringFit;
import org.ohmloom.bundle.section.DiameterStep;
import org.ohmloom.bundle.section.SegmentSection;
import org.ohmloom.bundle.section.SupportPlan;
import org.ohmloom.draw.section.SectionPicture;
import org.ohmloom.model.Harness;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.inspect.Inspection.Fact;
import org.ohmloom.workbench.inspect.Inspection.Facts;
import org.ohmloom.workbench.inspect.Inspection.Reason;
import org.ohmloom.workbench.inspect.Inspection.Reasons;
import org.ohmloom.workbench.inspect.Inspection.Section;
import org.ohmloom.workbench.study.Picture;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** The cross-section of a segment for the inspector: the picture, how the diameter comes about, what goes over it, supports. */
final class SegmentFacts {
    private static final Words WORDS = Words.of("inspector");

    private SegmentFacts() {}

    static List<Section> of(Harness harness, SegmentSection section) {
        List<Section> sections = new ArrayList<>();
        if (section.members().isEmpty()) {
            return sections;
        }
        sections.add(new Inspection.Drawing(
                WORDS.get("segment.cross-section"),
                new Picture(
                        WORDS.get(
                                "segment.cross-section-of-finished",
                                section.segment(),
                                TradeWords.count(section.wireCount(), "wire"),
                                Formats.millimetres(section.finishedMm())),
                        (fonts, widthMm, heightMm) -> SectionPicture.of(section, harness, fonts, widthMm, heightMm))));
        List<Reason> steps = new ArrayList<>();
        for (DiameterStep step : section.steps()) {
            steps.add(new Reason(
                    Formats.millimetres(step.millimetres()) + ": " + Words.said(step.words()),
                    "",
                    Words.said(step.told()),
                    false));
        }
        sections.add(new Reasons(WORDS.get("segment.diameter"), steps));
        List<Reason> coverings = new ArrayList<>();
        section.entered().ifPresent(fit -> coverings.add(reason(WORDS.get("segment.entered"), fit, true)));
        section.chosen()
                .filter(fit -> section.entered()
                        .filter(entered -> entered.size().equals(fit.size()))
                        .isEmpty())
                .ifPresent(fit -> coverings.add(reason(WORDS.get("segment.serves"), fit, false)));
        if (!coverings.isEmpty()) {
            sections.add(new Reasons(WORDS.get("segment.covering"), coverings));
        }
        section.lay().ifPresent(lay -> sections.add(layers(section, lay)));
        sections.add(new Facts(WORDS.get("segment.made"), facts(section)));
        return sections;
    }

    private static Reason reason(String what, CoveringFit fit, boolean entered) {
        String problems = fit.suits()
                ? ""
                : "; "
                        + String.join(
                                ", ",
                                fit.problems().stream().map(TradeWords::named).toList());
        return new Reason(
                what + ": " + fit.size().words(),
                TradeWords.capital(Words.said(fit.told())) + problems,
                fit.size().citation().text(),
                entered && fit.suits());
    }

    private static Inspection.Grid layers(SegmentSection section, ConcentricLay lay) {
        List<List<String>> rows = new ArrayList<>();
        for (ConcentricLay.Layer layer : lay.layers()) {
            rows.add(List.of(
                    WORDS.get("segment.places", layer.places(), TradeWords.named(layer.hand())),
                    String.join(
                            ", ",
                            layer.wires().stream()
                                    .map(k -> section.members().get(k).id())
                                    .toList()),
                    layer.fillers() == 0 ? "" : layer.fillers() + " fillers",
                    Double.isFinite(layer.layLengthMm()) ? Formats.millimetres(layer.layLengthMm()) : ""));
        }
        return new Inspection.Grid(
                WORDS.get("segment.layers", lay.words()),
                List.of(
                        WORDS.get("segment.layer"),
                        WORDS.get("segment.wires"),
                        WORDS.get("segment.fillers"),
                        WORDS.get("segment.lay-length")),
                rows);
    }

    private static List<Fact> facts(SegmentSection section) {
        SupportPlan plan = section.supports();
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of(
                WORDS.get("segment.bend-radius"),
                WORDS.get("segment.or-more", Formats.millimetres(section.bendLastingMm()))));
        facts.add(Fact.of(
                WORDS.get("segment.while-fitting"),
                WORDS.get("segment.or-more", Formats.millimetres(section.bendLeastMm()))));
        facts.add(Fact.of(WORDS.get("segment.copper"), Formats.kilograms(section.copperKg())));
        facts.add(Fact.of(
                WORDS.get("segment.mass"), WORDS.get("segment.estimated", Formats.kilograms(section.massKg()))));
        facts.add(Fact.of(
                WORDS.get("segment.supports"),
                WORDS.get(
                        "segment.at-most-apart-at",
                        plan.supportMetres().size(),
                        Formats.metres(plan.spacingMetres()),
                        String.join(
                                ", ",
                                plan.supportMetres().stream()
                                        .map(Formats::metres)
                                        .toList()))));
        facts.add(Fact.of(
                WORDS.get("segment.ties"), String.valueOf(plan.tieMetres().size())));
        facts.add(Fact.of(WORDS.get("segment.supports-by"), plan.spacingSource()));
        if (section.estimated() > 0) {
            facts.add(Fact.of(WORDS.get("segment.diameters-estimated"), String.valueOf(section.estimated())));
        }
        return facts;
    }
}
