package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bundle.packing.ConcentricLay;
import org.ohmloom.bundle.section.BundleStudy;
import org.ohmloom.bundle.section.CoveringFit;
import org.ohmloom.bundle.section.LabelPlan;
import org.ohmloom.bundle.section.SegmentSection;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.section.SectionPicture;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Covering;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Report;
import org.ohmloom.pack.page.Row;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;

/** The bundle segments: cross-section, diameters, coverings, supports, ties, and the markings of the wires. */
final class BundleReport {
    private static final double PICTURE_WIDTH_MM = 59;
    private static final double PICTURE_HEIGHT_MM = 74;
    private static final double LARGE_WIDTH_MM = 122;
    private static final double LARGE_HEIGHT_MM = 151;

    /** Ids of more wires than this stand legibly in a large picture only, which takes the place of four. */
    private static final int MANY = 36;

    private static final List<Column> SEGMENTS = List.of(
            Column.code("Segment").home(),
            Column.code("From").mentioning(),
            Column.code("To").mentioning(),
            Column.number("Length", Unit.MILLIMETRE, 0),
            Column.count("Wires", 0),
            Column.number("Ideal diameter", Unit.MILLIMETRE, 1),
            Column.number("Practical diameter", Unit.MILLIMETRE, 1),
            Column.number("Finished diameter", Unit.MILLIMETRE, 1),
            Column.number("Bend radius, least", Unit.MILLIMETRE, 0),
            Column.number("Copper", Unit.GRAM, 0),
            Column.number("Mass", Unit.GRAM, 0),
            Column.count("Supports", 0),
            Column.count("Ties", 0));

    private static final List<Column> COVERINGS = List.of(
            Column.code("Segment").mentioning(),
            Column.words("Covering"),
            Column.words("Size"),
            Column.number("Covered", Unit.MILLIMETRE, 0),
            Column.number("Cut", Unit.MILLIMETRE, 0),
            Column.words("Ends"),
            Column.words("How it suits"));

    private static final List<Column> LAYERS = List.of(
            Column.code("Segment").mentioning(),
            Column.count("Layer", 0),
            Column.count("Places", 0),
            Column.words("Wires"),
            Column.count("Fillers", 0),
            Column.number("Lay length", Unit.MILLIMETRE, 0),
            Column.words("Turns"));

    private static final List<Column> MARKINGS = List.of(
            Column.code("Wire").mentioning(), Column.count("Markings", 0), Column.words("At, mm from its first end"));

    private final Analysis analysis;
    private final Harness harness;
    private final SceneFonts fonts;
    private final BundleStudy study;

    BundleReport(Analysis analysis, SceneFonts fonts) {
        this.analysis = analysis;
        this.harness = analysis.harness();
        this.fonts = fonts;
        this.study = analysis.evidence().bundles();
    }

    Report report() {
        List<Block> blocks = new ArrayList<>(FirstPage.blocks(harness));
        blocks.add(new Block.Facts(List.of(
                new Block.Fact("Segments", String.valueOf(study.bySegment().size())),
                new Block.Fact("Copper along them", Formats.kilograms(study.copperKg())),
                new Block.Fact("Mass along them, estimated", Formats.kilograms(study.massKg())))));
        blocks.add(new Block.Table("", SEGMENTS, segments(), "The harness has no bundle segment."));
        blocks.add(new Block.Heading("Coverings"));
        blocks.add(new Block.Table("coverings", COVERINGS, coverings(), "No segment is covered."));
        List<Row> layers = layers();
        if (!layers.isEmpty()) {
            blocks.add(new Block.Heading("Twisted in layers"));
            blocks.add(new Block.Table("layers", LAYERS, layers, ""));
        }
        blocks.add(new Block.Heading("Cross-sections"));
        List<Scene> pictures = new ArrayList<>();
        List<Scene> largePictures = new ArrayList<>();
        for (SegmentSection section : study.bySegment().values()) {
            if (!section.members().isEmpty()) {
                boolean large = section.members().size() > MANY;
                (large ? largePictures : pictures)
                        .add(SectionPicture.of(
                                section,
                                harness,
                                fonts,
                                large ? LARGE_WIDTH_MM : PICTURE_WIDTH_MM,
                                large ? LARGE_HEIGHT_MM : PICTURE_HEIGHT_MM));
            }
        }
        pictures.addAll(largePictures);
        if (!pictures.isEmpty()) {
            blocks.add(new Block.Pictures(pictures));
        }
        blocks.add(new Block.Heading("Markings of wires"));
        blocks.add(new Block.Table("markings", MARKINGS, markings(), "No wire is to be marked."));
        blocks.add(new Block.Heading("What this rests on"));
        blocks.add(new Block.Points(List.copyOf(sources())));
        return new Report(
                blocks,
                "The ideal packing is a lower bound; coverings are chosen on the practical diameter. Bend radius: inside, where"
                        + " the bundle stays bent.");
    }

    private List<Row> segments() {
        List<Row> rows = new ArrayList<>();
        for (SegmentSection section : study.bySegment().values()) {
            BundleSegment segment = harness.segments().get(section.segment());
            rows.add(Row.of(
                    Cell.text(segment.id().value()).toned(Cell.Tone.STRONG),
                    Cell.text(segment.from().value()),
                    Cell.text(segment.to().value()),
                    Cell.number(Unit.MILLIMETRE.fromCanonical(segment.lengthMetres())),
                    Cell.number(section.wireCount()),
                    Cell.number(section.idealMm()),
                    Cell.number(section.practicalMm()),
                    Cell.number(section.finishedMm()),
                    Cell.number(section.bendLastingMm()),
                    Cell.number(Unit.GRAM.fromCanonical(section.copperKg())),
                    Cell.number(Unit.GRAM.fromCanonical(section.massKg())),
                    Cell.number(section.supports().supportMetres().size()),
                    Cell.number(section.supports().tieMetres().size())));
        }
        return rows;
    }

    private List<Row> coverings() {
        List<Row> rows = new ArrayList<>();
        for (SegmentSection section : study.bySegment().values()) {
            BundleSegment segment = harness.segments().get(section.segment());
            segment.covering().ifPresent(covering -> rows.add(covering(segment, covering, section)));
        }
        return rows;
    }

    private static Row covering(BundleSegment segment, Covering covering, SegmentSection section) {
        double coveredMm = Unit.MILLIMETRE.fromCanonical(segment.lengthMetres());
        return Row.of(
                Cell.text(segment.id().value()).toned(Cell.Tone.STRONG),
                Cell.text(Wording.covering(covering)),
                section.covering()
                        .map(fit ->
                                Cell.text(fit.size().id() + (section.entered().isPresent() ? "" : " (proposed)")))
                        .orElseGet(() -> Cell.missing("none serves")),
                Cell.number(coveredMm),
                section.covering()
                        .map(fit -> Cell.number(coveredMm * fit.materialMetres()))
                        .orElseGet(Cell::empty),
                Cell.text(covering.endFinish().map(BundleReport::word)),
                Cell.text(section.covering().map(CoveringFit::words)));
    }

    private List<Row> layers() {
        List<Row> rows = new ArrayList<>();
        for (SegmentSection section : study.bySegment().values()) {
            section.lay().ifPresent(lay -> {
                for (int k = 0; k < lay.layers().size(); k++) {
                    rows.add(layer(section, lay.layers().get(k), k));
                }
            });
        }
        return rows;
    }

    private static Row layer(SegmentSection section, ConcentricLay.Layer layer, int index) {
        return Row.of(
                Cell.text(section.segment().value()).toned(Cell.Tone.STRONG),
                Cell.number(index),
                Cell.number(layer.places()),
                Cell.text(layer.wires().stream()
                        .map(k -> section.members().get(k).id())
                        .collect(Collectors.joining(", "))),
                Cell.number(layer.fillers()),
                Double.isFinite(layer.layLengthMm()) ? Cell.number(layer.layLengthMm()) : Cell.empty(),
                Cell.text(word(layer.hand())));
    }

    private List<Row> markings() {
        List<Row> rows = new ArrayList<>();
        for (Wire wire : harness.wires().all()) {
            if (!wire.existing()) {
                analysis.evidence().lengths().of(wire.id()).ifPresent(length -> {
                    LabelPlan plan = label(wire, length.metres());
                    rows.add(Row.of(
                            Cell.text(wire.id().value()),
                            Cell.number(plan.metres().size()),
                            Cell.text(plan.metres().stream()
                                    .map(metres -> String.valueOf(Math.round(Unit.MILLIMETRE.fromCanonical(metres))))
                                    .collect(Collectors.joining(", ")))));
                });
            }
        }
        return rows;
    }

    private LabelPlan label(Wire wire, double lengthMetres) {
        return LabelPlan.of(
                wire, lengthMetres, harness, analysis.evidence().tables().fabrication());
    }

    private Set<String> sources() {
        Set<String> sources = new TreeSet<>();
        for (SegmentSection section : study.bySegment().values()) {
            section.steps().forEach(step -> sources.add("Diameter, " + step.words() + ": " + step.source()));
            section.covering().ifPresent(fit -> {
                sources.add("Covering: " + fit.size().citation().text());
                if (fit.limitFraction() > 0) {
                    sources.add("Filling: " + fit.limitSource().text());
                }
            });
            sources.add("Supports: " + section.supports().spacingSource());
            sources.add("Ties: " + section.supports().tieSource());
            section.members()
                    .forEach(member -> sources.add("Wire diameters: "
                            + member.citation().document() + ", "
                            + member.citation().table() + " ("
                            + member.citation().status().words() + ")"));
        }
        sources.add("Bend radius: "
                + analysis.evidence()
                        .tables()
                        .fabrication()
                        .value("bend-lasting")
                        .citation()
                        .text());
        sources.add("Markings: "
                + LabelPlan.of(
                                1,
                                harness.rules().fabricationRules(),
                                analysis.evidence().tables().fabrication())
                        .source());
        return sources;
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
