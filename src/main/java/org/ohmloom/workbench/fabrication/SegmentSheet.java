package org.ohmloom.workbench.fabrication;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bundle.section.SegmentSection;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Covering;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.review.StudyPart;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.ElementSheet;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Term;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** The bundle segments with what lies over them. */
final class SegmentSheet implements ElementSheet<SegmentSheet.Row> {
    private static final Words WORDS = Words.of("fabrication");

    /**
     * One segment.
     *
     * @param segment the segment
     * @param section its cross-section, as far as it is worked out
     * @param harness the harness as it is
     */
    record Row(BundleSegment segment, Optional<SegmentSection> section, Harness harness) {

        String covering(Function<Covering, String> text) {
            return segment.covering().map(text).orElse("");
        }
    }

    @Override
    public String title() {
        return WORDS.get("segment.segments-and-coverings");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(WORDS.term("segment.segment"), WORDS.get("segment.segment.about"), 9, row -> row.segment()
                        .id()
                        .value()),
                Column.text(WORDS.term("segment.from"), WORDS.get("segment.from.about"), 8, row -> row.segment()
                        .from()
                        .value()),
                Column.text(WORDS.term("segment.to"), WORDS.get("segment.to.about"), 8, row -> row.segment()
                        .to()
                        .value()),
                ColumnEdits.number(
                        WORDS.term("segment.length"),
                        "m",
                        WORDS.get("segment.length.about"),
                        row -> CellText.of(row.segment().lengthMetres()),
                        (rows, typed) -> SegmentEdits.length(segments(rows), typed)),
                ColumnEdits.words(
                        WORDS.term("segment.zone"),
                        WORDS.get("segment.zone.about"),
                        8,
                        row -> row.segment().zone().map(ElementId::value).orElse(""),
                        (rows, typed) -> SegmentEdits.zone(rows.get(0).harness(), segments(rows), typed)),
                ColumnEdits.words(
                        WORDS.term("segment.covering"),
                        WORDS.get("segment.covering.about"),
                        13,
                        row -> row.covering(covering -> SegmentEdits.word(covering.kind())),
                        (rows, typed) -> SegmentEdits.kind(segments(rows), typed)),
                covering(
                        WORDS.term("segment.size"),
                        WORDS.get("segment.size.about"),
                        13,
                        each -> each.size().orElse(""),
                        SegmentEdits::size),
                covering(
                        WORDS.term("segment.in-words"),
                        WORDS.get("segment.in-words.about"),
                        15,
                        Covering::text,
                        SegmentEdits::words),
                covering(
                        WORDS.term("segment.overlap"),
                        WORDS.get("segment.overlap.about"),
                        9,
                        each -> each.overlapFraction().isPresent()
                                ? TypedNumbers.exact(Unit.PERCENT.fromCanonical(
                                                each.overlapFraction().getAsDouble())) + " %"
                                : "",
                        SegmentEdits::overlap),
                covering(
                        WORDS.term("segment.ends"),
                        WORDS.get("segment.ends.about"),
                        11,
                        each -> each.endFinish().map(SegmentEdits::word).orElse(""),
                        SegmentEdits::ends),
                ColumnEdits.number(
                        WORDS.term("segment.lay"),
                        "mm",
                        WORDS.get("segment.lay.about"),
                        row -> CellText.of(row.segment().layLengthMm()),
                        (rows, typed) -> SegmentEdits.lay(segments(rows), typed)),
                Column.number(WORDS.term("segment.wires"), "", WORDS.get("segment.wires.about"), row -> row.section()
                        .map(section -> CellText.of(section.members().size()))
                        .orElse(CellText.EMPTY)),
                Column.number(
                        WORDS.term("segment.over-all"), "mm", WORDS.get("segment.over-all.about"), row -> row.section()
                                .map(section -> CellText.of(section.finishedMm()))
                                .orElse(CellText.EMPTY)),
                new Column<Row>(
                        WORDS.term("segment.would-serve"),
                        "",
                        WORDS.get("segment.would-serve.about"),
                        30,
                        row -> row.section()
                                .flatMap(SegmentSection::chosen)
                                .map(fit -> CellText.of(fit.size().words()).in(Tone.SOFT))
                                .orElse(CellText.EMPTY),
                        Optional.empty()));
    }

    private static Column<Row> covering(
            Term title,
            String tip,
            int letters,
            Function<Covering, String> text,
            BiFunction<List<BundleSegment>, String, Edit> parse) {
        Function<Row, String> shown = row -> row.covering(text);
        return Column.text(title, tip, letters, shown)
                .edited(ColumnEdits.of(row -> row.segment().covering().isPresent(), shown, Row::segment, parse));
    }

    private static List<BundleSegment> segments(List<Row> rows) {
        return rows.stream().map(Row::segment).toList();
    }

    @Override
    public List<Row> rows(Readout readout) {
        Optional<Analysis> known = readout.having(Set.of(StudyPart.BUNDLES)).analysis();
        return readout.harness().segments().all().stream()
                .map(segment -> new Row(
                        segment,
                        known.flatMap(analysis -> analysis.evidence().bundles().of(segment.id())),
                        readout.harness()))
                .toList();
    }

    @Override
    public ElementId id(Row row) {
        return row.segment().id();
    }
}
