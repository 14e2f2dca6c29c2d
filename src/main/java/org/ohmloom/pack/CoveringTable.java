package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bundle.section.CoveringFit;
import org.ohmloom.bundle.section.SegmentSection;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Covering;
import org.ohmloom.model.Harness;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.units.Unit;

/** The coverings as they are cut: where each begins and ends, over what, how long, and how its ends are held. */
final class CoveringTable {
    private static final List<Column> COLUMNS = List.of(
            Column.tick("Cut"),
            Column.code("Segment").mentioning(),
            Column.code("Begins at").mentioning(),
            Column.code("Ends at").mentioning(),
            Column.words("Covering"),
            Column.words("Size"),
            Column.code("Part").mentioning(),
            Column.number("Over", Unit.MILLIMETRE, 1),
            Column.number("Covered", Unit.MILLIMETRE, 0),
            Column.number("Per metre", Unit.METRE, 3),
            Column.number("Cut to", Unit.MILLIMETRE, 0),
            Column.words("Ends held"),
            Column.tick("On"));

    private final Analysis analysis;
    private final Harness harness;

    CoveringTable(Analysis analysis) {
        this.analysis = analysis;
        this.harness = analysis.harness();
    }

    List<Block> blocks() {
        List<Row> rows = rows();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("Coverings"));
        blocks.add(new Block.Table("coverings", COLUMNS, rows, "No segment is covered."));
        if (!rows.isEmpty()) {
            blocks.add(new Block.Prose("Cut to: covered length times what a metre takes: 1 for conduit, tube and braid;"
                    + " 1 / (1 - shrinking along) for heat-shrink; the length of the winding for tape. Rows behind it in"
                    + " Bundles and coverings."));
        }
        return blocks;
    }

    /** One row for each covered segment. */
    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (BundleSegment segment : harness.segments().all()) {
            segment.covering().ifPresent(covering -> rows.add(row(segment, covering)));
        }
        return rows;
    }

    private Row row(BundleSegment segment, Covering covering) {
        SegmentSection section = analysis.evidence().bundles().of(segment.id()).orElseThrow();
        double coveredMm = Unit.MILLIMETRE.fromCanonical(segment.lengthMetres());
        double perMetre = section.covering().map(CoveringFit::materialMetres).orElse(1.0);
        return Row.of(
                Cell.empty(),
                Cell.text(segment.id().value()).toned(Cell.Tone.STRONG),
                Cell.text(segment.from().value()),
                Cell.text(segment.to().value()),
                Cell.text(Wording.covering(covering)),
                section.covering()
                        .map(fit ->
                                Cell.text(fit.size().id() + (section.entered().isPresent() ? "" : " (proposed)")))
                        .orElseGet(() -> Cell.missing("none serves")),
                Wording.part(covering.part()),
                Cell.number(section.practicalMm()),
                Cell.number(coveredMm),
                Cell.number(perMetre),
                Cell.number(coveredMm * perMetre),
                covering.endFinish().map(finish -> Cell.text(word(finish))).orElseGet(() -> Cell.missing("not said")),
                Cell.empty());
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
