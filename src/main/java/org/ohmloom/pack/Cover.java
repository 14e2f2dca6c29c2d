package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Totals;
import org.ohmloom.model.Assembly;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Revision;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Report;
import org.ohmloom.pack.page.Row;
import org.ohmloom.review.Severity;
import org.ohmloom.tables.BuildTime;
import org.ohmloom.units.Formats;

/** The cover of the pack: what it is, what belongs to it, its revisions, what it comes to, and what is still open. */
final class Cover {
    private static final String REMARK = "All documents of the pack carry the revision of this cover; one of another"
            + " revision does not belong to it.";

    private static final List<Column> CONTENTS =
            List.of(Column.words("Document"), Column.words("Content"), Column.code("File"));

    private static final List<Column> REVISIONS =
            List.of(Column.code("Revision"), Column.code("Date"), Column.words("By"), Column.words("Change"));

    private static final List<Column> ASSEMBLIES =
            List.of(Column.code("Number"), Column.words("Assembly"), Column.code("Revision"), Column.count("Wires", 0));

    private static final List<Column> TIMES = List.of(
            Column.words("Operation"),
            Column.count("Times", 0),
            Column.count("Minutes each", 1),
            Column.count("Minutes", 0));

    private static final Map<String, String> WORDS = Map.of(
            BuildTime.WIRE, "cut and mark a wire",
            BuildTime.CRIMP, "crimp an end",
            BuildTime.TWIST, "twist a pair",
            BuildTime.SPLICE, "make a splice",
            BuildTime.SEGMENT, "lay a segment",
            BuildTime.CAVITY, "fill a cavity",
            BuildTime.COVERING, "cover a segment",
            BuildTime.GROUND, "fit a terminal to ground",
            BuildTime.NET, "test a net");

    private final Analysis analysis;
    private final Harness harness;
    private final Set<PackDocument> documents;
    private final FileNames names;
    private final BuildTimes bench;

    Cover(Analysis analysis, Set<PackDocument> documents, FileNames names) {
        this.analysis = analysis;
        this.harness = analysis.harness();
        this.documents = documents;
        this.names = names;
        this.bench = BuildTimes.of(analysis);
    }

    Report report() {
        List<Block> blocks = new ArrayList<>(FirstPage.blocks(harness));
        blocks.add(totals());
        blocks.add(new Block.Heading("Contents"));
        blocks.add(new Block.Table("contents", CONTENTS, contents(), ""));
        blocks.add(new Block.Heading("Revisions"));
        blocks.add(new Block.Table("revisions", REVISIONS, revisions(), "Not yet revised."));
        if (!harness.assemblies().isEmpty()) {
            blocks.add(new Block.Heading("Assemblies"));
            blocks.add(new Block.Table("assemblies", ASSEMBLIES, assemblies(), ""));
        }
        blocks.addAll(new FindingSection(analysis).blocks());
        blocks.add(new Block.Heading("Time at the bench"));
        blocks.add(new Block.Table("times", TIMES, times(), ""));
        return new Report(blocks, REMARK);
    }

    private Block totals() {
        Totals totals = analysis.totals();
        return new Block.Facts(List.of(
                new Block.Fact("Wires to be made", String.valueOf(totals.wires())),
                new Block.Fact("Length of them", Formats.metres(totals.lengthMetres())),
                new Block.Fact("Copper in them", Formats.kilograms(totals.copperKg())),
                new Block.Fact(
                        "Mass of wires and coverings along the segments",
                        Formats.kilograms(analysis.evidence().bundles().massKg())),
                new Block.Fact("Connectors to be fitted", String.valueOf(totals.connectors())),
                new Block.Fact(
                        "Crimps and splices",
                        bench.counts().get(BuildTime.CRIMP) + " and "
                                + bench.counts().get(BuildTime.SPLICE)),
                new Block.Fact(
                        "Time at the bench, a rough estimate (common practice, no source)",
                        Math.max(1, Math.round(bench.minutes() / 60)) + " h"),
                new Block.Fact("Design basis", analysis.evidence().basis().title()),
                Workmanship.fact(analysis),
                new Block.Fact("Open findings", open()),
                new Block.Fact("Findings accepted with a reason", String.valueOf(accepted()))));
    }

    private String open() {
        return Arrays.stream(Severity.values())
                .map(severity -> Wording.count(
                        analysis.findings().stream()
                                .filter(finding -> finding.isOpen() && finding.severity() == severity)
                                .count(),
                        severity.name().toLowerCase(Locale.ROOT)))
                .collect(Collectors.joining(", "));
    }

    private long accepted() {
        return analysis.findings().stream()
                .filter(finding -> finding.waiver().isPresent())
                .count();
    }

    private List<Row> times() {
        List<Row> rows = new ArrayList<>();
        bench.counts().forEach((operation, count) -> {
            double each = analysis.evidence().tables().buildMinutes(operation).value();
            rows.add(Row.of(
                    Cell.text(WORDS.getOrDefault(operation, operation)),
                    Cell.number(count),
                    Cell.number(each),
                    Cell.number(count * each)));
        });
        rows.add(Row.of(
                Cell.text("in all").toned(Cell.Tone.STRONG), Cell.empty(), Cell.empty(), Cell.number(bench.minutes())));
        return rows;
    }

    private List<Row> contents() {
        return documents.stream()
                .filter(document -> document != PackDocument.COVER)
                .map(document -> Row.of(
                        Cell.text(document.title()).toned(Cell.Tone.STRONG),
                        Cell.text(document.content()),
                        Cell.text(names.pdf(document))))
                .collect(Collectors.toList());
    }

    private List<Row> revisions() {
        List<Row> rows = new ArrayList<>();
        for (Revision revision : harness.titleBlock().revisions()) {
            rows.add(Row.of(
                    Cell.text(revision.index()).toned(Cell.Tone.STRONG),
                    Cell.text(revision.date()),
                    Cell.text(revision.by()),
                    Cell.text(revision.description())));
        }
        return rows;
    }

    private List<Row> assemblies() {
        List<Row> rows = new ArrayList<>();
        for (Assembly assembly : harness.assemblies().all()) {
            long wires = harness.wires().all().stream()
                    .filter(wire -> !wire.existing()
                            && wire.assembly().filter(assembly.id()::equals).isPresent())
                    .count();
            rows.add(Row.of(
                    Cell.text(assembly.number()).toned(Cell.Tone.STRONG),
                    Cell.text(assembly.name()),
                    Cell.text(assembly.revision()),
                    Cell.number(wires)));
        }
        return rows;
    }
}
