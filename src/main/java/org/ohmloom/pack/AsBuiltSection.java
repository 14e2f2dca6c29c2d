package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ohmloom.bench.AsBuiltRecord;
import org.ohmloom.bench.Judgement;
import org.ohmloom.bench.Verdict;
import org.ohmloom.model.Reading;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.units.Formats;

/** What was measured on the built harnesses, value by value with its verdict, by serial number. */
final class AsBuiltSection {
    private static final List<Column> COLUMNS = List.of(
            Column.code("Reading"),
            Column.fileOnly("Serial number"),
            Column.words("What"),
            Column.code("Where").mentioning(),
            Column.code("Measured"),
            Column.code("Limit"),
            Column.code("Verdict"),
            Column.words("How the limit comes about"),
            Column.code("How measured"),
            Column.code("By, date"),
            Column.fileOnly("Revision"),
            Column.fileOnly("Source"),
            Column.fileOnly("Remark"));

    private final AsBuiltRecord record;

    AsBuiltSection(AsBuiltRecord record) {
        this.record = record;
    }

    List<Block> blocks() {
        List<Row> rows = new ArrayList<>();
        for (String serial : record.serialNumbers()) {
            rows.add(Row.group(
                    serial.equals(AsBuiltRecord.NO_SERIAL) ? "Without a serial number" : "Serial number " + serial));
            record.of(serial).forEach(judgement -> rows.add(row(judgement)));
        }
        return List.of(
                new Block.Prose("What was measured, held against the limits of this revision at the temperature of the"
                        + " measurement: of a resistance the listed maximum of the wires, plus contacts and joints, plus what the"
                        + " instrument adds. A later reading of the same thing takes the place of an earlier one; \"in use\": the"
                        + " calculation takes it instead of its own. "
                        + record.summary() + "."),
                new Block.Table("as-built", COLUMNS, rows, ""));
    }

    private static Row row(Judgement judgement) {
        Reading reading = judgement.reading();
        return Row.of(
                Cell.text(reading.id().value()).toned(Cell.Tone.STRONG),
                Cell.text(reading.serialNumber()),
                Cell.text(what(reading)),
                Cell.text(Wording.printed(reading.measured().place())),
                Cell.text(judgement.valueText()),
                Cell.text(judgement.limitText()),
                verdict(judgement),
                Cell.text(Wording.printed(judgement.because())),
                Cell.text(how(reading)),
                Cell.text(Stream.of(reading.by(), reading.measuredAt())
                        .flatMap(Optional::stream)
                        .collect(Collectors.joining(", "))),
                Cell.text(reading.revision()),
                Cell.text(judgement.source()),
                Cell.text(reading.remark()));
    }

    private static String what(Reading reading) {
        String words = reading.measured().words().english().replaceFirst("^(a|the) ", "");
        String named = words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
        return reading.replaces() ? named + ", in use" : named;
    }

    private static Cell verdict(Judgement judgement) {
        if (!judgement.stands()) {
            return Cell.text("measured again: "
                            + judgement.superseded().orElseThrow().id())
                    .toned(Cell.Tone.SOFT);
        }
        Cell cell = Cell.text(judgement.verdict().words());
        return judgement.verdict() == Verdict.FAILED ? cell.toned(Cell.Tone.ALERT) : cell;
    }

    private static String how(Reading reading) {
        return Stream.of(
                        reading.method().map(method -> method == Reading.Method.FOUR_WIRE ? "four wires" : "two wires"),
                        reading.conductorCelsius().isPresent()
                                ? Optional.of(Formats.celsius(
                                        reading.conductorCelsius().getAsDouble()))
                                : Optional.<String>empty(),
                        reading.instrument())
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
    }
}
