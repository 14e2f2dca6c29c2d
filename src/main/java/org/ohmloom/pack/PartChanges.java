package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.ohmloom.analysis.revision.RevisionComparison;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Part;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.words.Constants;
import org.ohmloom.words.Text;

/** What has to be bought more or less of, from one revision to the next: the two bills of materials, line by line. */
final class PartChanges {
    private static final double LEAST_METRES = 0.5e-3;

    private static final List<Column> COLUMNS = List.of(
            Column.words("Group"),
            Column.code("Part number"),
            Column.words("Maker"),
            Column.words("Description"),
            Column.colour("Colour"),
            Column.code("Unit"),
            Column.count("Before", 2),
            Column.count("After", 2),
            Column.count("Difference", 2));

    private final RevisionComparison comparison;

    PartChanges(RevisionComparison comparison) {
        this.comparison = comparison;
    }

    /** What makes two lines of two bills the same: not the assembly, which only says where a part goes. */
    private record Line(MaterialKind kind, String number, String maker, Text what, Material sample)
            implements Comparable<Line> {
        @Override
        public int compareTo(Line other) {
            int byKind = kind.compareTo(other.kind);
            return byKind != 0 ? byKind : key().compareTo(other.key());
        }

        private String key() {
            return number + "|" + what.english() + "|" + sample.colour() + "|" + sample.unit();
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Line that && compareTo(that) == 0;
        }

        @Override
        public int hashCode() {
            return key().hashCode();
        }
    }

    Block.Table table() {
        return new Block.Table(
                "parts",
                COLUMNS,
                list().stream().map(PartChanges::row).toList(),
                "The same parts in the same quantities.");
    }

    /** The lines that differ, in the order of the bill of materials. */
    List<PartChange> list() {
        Map<Line, Double> before = lines(
                new BillOfMaterials(comparison.before()), comparison.before().harness());
        Map<Line, Double> after = lines(
                new BillOfMaterials(comparison.after()), comparison.after().harness());
        Map<Line, double[]> both = new TreeMap<>();
        before.forEach((line, quantity) -> both.computeIfAbsent(line, key -> new double[2])[0] = quantity);
        after.forEach((line, quantity) -> both.computeIfAbsent(line, key -> new double[2])[1] = quantity);
        List<PartChange> changes = new ArrayList<>();
        both.forEach((line, quantities) -> {
            if (Math.abs(quantities[1] - quantities[0]) > LEAST_METRES) {
                changes.add(change(line, quantities[0], quantities[1]));
            }
        });
        return changes;
    }

    private static Map<Line, Double> lines(BillOfMaterials bill, Harness harness) {
        Map<Line, Double> lines = new TreeMap<>();
        bill.materials().forEach((material, count) -> {
            Optional<Part> part = material.part().map(harness.parts()::get);
            Line line = new Line(
                    material.kind(),
                    material.part().map(id -> id.value()).orElse(""),
                    part.map(Part::maker).orElse(""),
                    material.description().isEmpty()
                            ? Text.of(
                                    Wording.printed(part.map(Part::description).orElse("")))
                            : Wording.printed(material.what()),
                    material);
            lines.merge(line, count.quantity(), Double::sum);
        });
        return lines;
    }

    private static PartChange change(Line line, double before, double after) {
        boolean wire = line.kind() == MaterialKind.WIRE;
        boolean pieces = line.sample().unit().equals(Material.PIECE);
        return new PartChange(
                Constants.text(line.kind()),
                wire ? MaterialTexts.text("by-description") : Text.of(line.number()),
                line.maker(),
                line.what(),
                line.sample().colour(),
                pieces ? MaterialTexts.text("piece") : Text.of(line.sample().unit()),
                pieces,
                before,
                after);
    }

    private static Row row(PartChange change) {
        return Row.of(
                Cell.text(change.group()),
                change.number().isEmpty() ? Cell.missing(Wording.NOT_CHOSEN) : Cell.text(change.number()),
                Cell.text(change.maker()),
                Cell.text(change.description()),
                change.colour().map(Cell::colour).orElse(Cell.empty()),
                Cell.text(change.unit()),
                quantity(change, change.before()),
                quantity(change, change.after()),
                quantity(change, change.difference()).toned(Cell.Tone.STRONG));
    }

    private static Cell quantity(PartChange change, double quantity) {
        return change.pieces() ? Cell.number(quantity, String.valueOf(Math.round(quantity))) : Cell.number(quantity);
    }
}
