package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.ohmloom.model.NearestText;
import org.ohmloom.tables.TableSheet;
import org.ohmloom.tables.WireTables;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists the shipped tables with their sources and status, or prints one. */
@Command(
        name = "tables",
        mixinStandardHelpOptions = true,
        description = "Lists the shipped tables, their sources and status; with a name prints that table.")
final class TablesCommand implements Callable<Integer> {

    @Parameters(paramLabel = "NAME", arity = "0..1", description = "A table, as the list names it.")
    private @Nullable String name;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws RefusedInputException {
        WireTables tables = WireTables.bundled();
        PrintWriter out = spec.commandLine().getOut();
        if (name == null) {
            SheetText.list(tables.sheets(), out);
        } else {
            SheetText.print(sheet(tables, name), out);
        }
        return ExitStatus.CLEAN;
    }

    private static TableSheet sheet(WireTables tables, String name) throws RefusedInputException {
        Optional<TableSheet> found = tables.findSheet(name);
        if (found.isPresent()) {
            return found.get();
        }
        List<String> names = tables.sheets().stream().map(TableSheet::name).toList();
        throw new RefusedInputException("no table '" + name + "'" + NearestText.question(name, names));
    }
}
