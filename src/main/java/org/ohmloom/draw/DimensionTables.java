package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.bundle.section.SupportPlan;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Zone;
import org.ohmloom.tables.FabricationTables;
import org.ohmloom.units.Formats;

/** The tables of a drawing: breakouts from their datums, segments with what is over and along them, splices, flagged notes. */
final class DimensionTables {

    private static final double SAME_METRES = 0.0005;

    private final Harness harness;
    private final SheetDetail detail;
    private final Optional<FabricationTables> tables;
    private final Lettering lettering;

    DimensionTables(Harness harness, SheetDetail detail, Optional<FabricationTables> tables, Lettering lettering) {
        this.harness = harness;
        this.detail = detail;
        this.tables = tables;
        this.lettering = lettering;
    }

    /** Those that have rows. */
    List<TableBlock> blocks() {
        List<TableBlock> blocks =
                new ArrayList<>(List.of(breakouts(), segments(), coverings(), supports(), splices(), notes()));
        blocks.removeIf(block -> block.rows().isEmpty());
        return blocks;
    }

    private TableBlock breakouts() {
        List<TableBlock.Row> rows = new ArrayList<>();
        for (Datums.Measured each : detail.datums().all()) {
            String datum = each.datum().isEmpty() ? "" : each.datum() + " = ";
            rows.add(row(
                    each.breakout().value(),
                    name(each.breakout()),
                    datum + name(each.from()),
                    String.join(", ", each.along()),
                    Words.millimetres(each.metres()),
                    tolerance(each.metres())));
        }
        return table(
                "Breakouts",
                "between the centres of breakouts, mm",
                rows,
                column("Breakout", 0.24),
                column("Measured from", 0.27),
                column("Along", 0.29),
                number("Distance", 0.1),
                number("Tolerance", 0.1));
    }

    private TableBlock segments() {
        List<TableBlock.Row> rows = new ArrayList<>();
        for (BundleSegment segment : harness.segments().all()) {
            String id = segment.id().value();
            rows.add(row(
                    id,
                    id + flag(id),
                    name(segment.from()),
                    name(segment.to()),
                    segment.zone().map(harness.zones()::get).map(this::zone).orElse(""),
                    Words.millimetres(segment.lengthMetres()),
                    tolerance(segment.lengthMetres())));
        }
        return table(
                "Segments",
                "length from end to end, mm",
                rows,
                column("Segment", 0.12),
                column("From", 0.21),
                column("To", 0.21),
                column("Zone, ambient", 0.26),
                number("Length", 0.1),
                number("Tolerance", 0.1));
    }

    private String zone(Zone zone) {
        return zone.name() + ", " + Formats.celsius(zone.ambientCelsius());
    }

    private TableBlock coverings() {
        List<TableBlock.Row> rows = new ArrayList<>();
        for (BundleSegment segment : harness.segments().all()) {
            segment.covering()
                    .ifPresent(covering -> rows.add(row(
                            segment.id().value(),
                            segment.id().value(),
                            CoveringWords.sized(covering),
                            "0 to " + Words.millimetres(segment.lengthMetres()),
                            CoveringWords.overlap(covering),
                            CoveringWords.ends(covering),
                            covering.part().map(Object::toString).orElse(""))));
        }
        return table(
                "Coverings",
                "start and end in mm from the first breakout of the segment",
                rows,
                column("Segment", 0.12),
                column("Kind and size", 0.33),
                column("Start to end", 0.16),
                column("Overlap", 0.1),
                column("Ends", 0.13),
                column("Part", 0.16));
    }

    private TableBlock supports() {
        List<TableBlock.Row> rows = new ArrayList<>();
        for (BundleSegment segment : harness.segments().all()) {
            SupportPlan plan = detail.supports().get(segment.id());
            if (plan != null) {
                rows.add(row(
                        segment.id().value(),
                        segment.id().value(),
                        name(segment.from()),
                        places(plan.supportMetres()),
                        places(plan.tieMetres())));
            }
        }
        return table(
                "Supports and ties",
                "mm from the breakout named",
                rows,
                column("Segment", 0.12),
                column("From", 0.2),
                column("Supports at", 0.34),
                column("Ties at", 0.34));
    }

    /** Places in a row; more than three at even distances as "50 to 650, every 200". */
    static String places(List<Double> metres) {
        int last = metres.size() - 1;
        if (last > 2) {
            double step = metres.get(1) - metres.get(0);
            boolean even = true;
            for (int k = 1; k <= last; k++) {
                even &= Math.abs(metres.get(k) - metres.get(k - 1) - step) < SAME_METRES;
            }
            if (even) {
                return Words.millimetres(metres.get(0)) + " to " + Words.millimetres(metres.get(last)) + ", every "
                        + Words.millimetres(step) + " (" + (last + 1) + ")";
            }
        }
        return String.join(", ", metres.stream().map(Words::millimetres).toList());
    }

    private TableBlock splices() {
        List<TableBlock.Row> rows = new ArrayList<>();
        for (Splice splice : harness.splices().all()) {
            String id = splice.id().value();
            splice.place().ifPresent(place -> rows.add(spliceRow(splice, id + flag(id), place)));
        }
        return table(
                "Splices",
                "middle of the splice from the breakout named, mm",
                rows,
                column("Splice", 0.14),
                column("Name", 0.28),
                column("Measured from", 0.26),
                column("Along", 0.2),
                number("Distance", 0.12));
    }

    private TableBlock.Row spliceRow(Splice splice, String id, Place place) {
        if (place instanceof Place.AtBreakout at) {
            return row(splice.id().value(), id, splice.name(), name(at.breakout()), "", "0");
        }
        Place.OnSegment on = (Place.OnSegment) place;
        BundleSegment segment = harness.segments().get(on.segment());
        return row(
                splice.id().value(),
                id,
                splice.name(),
                name(segment.from()),
                on.segment().value(),
                Words.millimetres(on.distanceMetres()));
    }

    private TableBlock notes() {
        List<TableBlock.Row> rows = new ArrayList<>();
        for (NoteFlags.Flag flag : detail.flags().all()) {
            rows.add(row(flag.element(), flag.name(), flag.element(), flag.text()));
        }
        return table(
                "Notes",
                "by the flags on the drawing",
                rows,
                column("Flag", 0.08),
                column("On", 0.12),
                column("Note", 0.8));
    }

    private String name(BreakoutId id) {
        return Spot.name(harness.breakouts().get(id));
    }

    private String flag(String id) {
        String flag = detail.flags().of(id);
        return flag.isEmpty() ? "" : " " + flag;
    }

    private String tolerance(double metres) {
        return tables.map(each -> "+" + Words.millimetres(each.tolerance(metres).metres(metres)) + " / 0")
                .orElse("");
    }

    private TableBlock table(String title, String about, List<TableBlock.Row> rows, TableBlock.Column... columns) {
        return new TableBlock(lettering, title, about, List.of(columns), rows);
    }

    private static TableBlock.Row row(String element, String... cells) {
        return new TableBlock.Row(Optional.of(element), List.of(cells));
    }

    private static TableBlock.Column column(String head, double share) {
        return new TableBlock.Column(head, share, false);
    }

    private static TableBlock.Column number(String head, double share) {
        return new TableBlock.Column(head, share, true);
    }
}
