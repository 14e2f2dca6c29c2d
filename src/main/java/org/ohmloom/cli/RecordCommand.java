package org.ohmloom.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bench.record.FilledSheet;
import org.ohmloom.bench.record.RecordDefaults;
import org.ohmloom.bench.record.RecordRefusedException;
import org.ohmloom.model.Harness;
import org.ohmloom.review.Cautions;
import org.ohmloom.store.CsvTable;
import org.ohmloom.store.CsvTableException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.QuantityFormatException;
import org.ohmloom.units.QuantityParser;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes the values of filled-in test sheets into the as-built record of a copy, and prints each with its verdict. */
@Command(
        name = "record",
        mixinStandardHelpOptions = true,
        description =
                "Takes measured values from filled-in tables of the test sheet into the as-built record of a copy;"
                        + " prints each with its limit and verdict.",
        footer = {
            "",
            "A table is the test sheet's own CSV with its blanks filled in, with a decimal point or comma, and commas, semicolons or"
                    + " tabs between the cells. Columns Wire, Measured mΩ and Joint, Measured mΩ take single wires and joints; a"
                    + " column Replaces with yes lets the value take the place of the calculated one.",
            "Exit status: 0 no error findings, 1 error findings, 2 usage, or a file that cannot be read."
        })
final class RecordCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", description = "A harness file, *.harness.json.")
    private Path file;

    @Option(
            names = "--values",
            paramLabel = "CSV",
            required = true,
            description = "A filled-in table; may be given several times.")
    private List<Path> tables;

    @Option(names = "--out", paramLabel = "FILE", required = true, description = "Where to write the copy.")
    private Path target;

    @Option(
            names = "--serial",
            paramLabel = "NUMBER",
            description = "Serial number of the built harness, where a table does not say it.")
    private @Nullable String serial;

    @Option(names = "--built-to", paramLabel = "REVISION", description = "Revision it was built to.")
    private @Nullable String revision;

    @Option(
            names = "--temperature",
            paramLabel = "T",
            description = "Temperature of its conductors while it was measured, as 22 or 72degF; without one: 20 °C.")
    private @Nullable String temperature;

    @Option(names = "--instrument", paramLabel = "NAME", description = "The instrument.")
    private @Nullable String instrument;

    @Option(names = "--by", paramLabel = "NAME", description = "Who measured.")
    private @Nullable String by;

    @Option(names = "--date", paramLabel = "DATE", description = "When, as 2026-01-31 or 2026-01-31T14:05.")
    private @Nullable String date;

    @Option(names = "--state", paramLabel = "ID", description = "Operating state of a test under power.")
    private @Nullable String state;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        Inputs.refuseSame(file, target);
        PrintWriter out = spec.commandLine().getOut();
        Harness harness = HarnessFiles.read(file);
        for (Path table : tables) {
            harness = taken(harness, table, out);
        }
        Analysis analysis = Inputs.analysed(file, harness);
        HarnessFiles.write(target, harness);
        out.println();
        ReadingsText.print(analysis, out);
        out.println("Written to " + target + ".");
        out.println();
        FindingsText.summary(analysis, Integer.MAX_VALUE, out);
        out.println();
        out.println(Wrap.text(Cautions.paragraph().english(), 100));
        return ExitStatus.of(analysis);
    }

    private Harness taken(Harness harness, Path table, PrintWriter out) throws RefusedInputException {
        try {
            FilledSheet sheet = FilledSheet.of(CsvTable.read(table), harness, defaults());
            out.println(table + ": " + sheet.readings().size() + " readings taken, " + sheet.blanks()
                    + " lines without a value");
            if (!sheet.leftOut().isEmpty()) {
                out.println(table + ": columns left out: " + String.join("; ", sheet.leftOut()));
            }
            return harness.withAll(sheet.readings());
        } catch (CsvTableException unreadable) {
            throw new RefusedInputException(unreadable.getMessage());
        } catch (RecordRefusedException refused) {
            // All but the last are told here, each on its line; the last goes the way of every refusal.
            List<String> lines = refused.lines().stream().map(Text::english).toList();
            lines.subList(0, lines.size() - 1)
                    .forEach(line -> spec.commandLine().getErr().println("ohmloom: " + PlainRefusals.oneLine(line)));
            throw new RefusedInputException(lines.get(lines.size() - 1));
        }
    }

    private RecordDefaults defaults() throws RefusedInputException {
        try {
            return new RecordDefaults(
                    Optional.ofNullable(serial),
                    Optional.ofNullable(revision),
                    temperature == null
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(
                                    QuantityParser.parse(temperature, Dimension.TEMPERATURE, Unit.DEGREE_CELSIUS)
                                            .canonical()),
                    Optional.ofNullable(instrument),
                    Optional.ofNullable(by),
                    Optional.ofNullable(date),
                    Optional.ofNullable(state));
        } catch (QuantityFormatException wrong) {
            throw new RefusedInputException("--temperature: " + wrong.getMessage());
        }
    }
}
