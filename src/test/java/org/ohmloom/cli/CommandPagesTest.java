package org.ohmloom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import picocli.CommandLine;

/**
 * The page of the manual about a command ends with its usage as the command prints it. After a change of a command,
 * {@code mvn test -Dtest=CommandPagesTest -Dohmloom.update=true} writes these ends anew.
 */
@BesideOthers
class CommandPagesTest {

    private static final Path PAGES = Path.of("src/main/resources/org/ohmloom/manual/command-line");
    private static final String HEAD = "## Usage\n";

    @Test
    void everyCommandHasAPageThatEndsWithItsUsage() throws IOException {
        Map<String, String> wrong = new TreeMap<>();
        CommandLine all = new CommandLine(new OhmloomCommand()).setUsageHelpAutoWidth(false);
        for (Map.Entry<String, CommandLine> each : all.getSubcommands().entrySet()) {
            if (each.getKey().equals("help")) {
                continue;
            }
            Path page = PAGES.resolve(each.getKey() + ".md");
            String before = Files.readString(page);
            int at = before.indexOf(HEAD);
            String usage = each.getValue()
                    .getUsageMessage(CommandLine.Help.Ansi.OFF)
                    .replace("\r", "")
                    .stripTrailing();
            String text = (at < 0 ? before.stripTrailing() + "\n\n" : before.substring(0, at)) + HEAD + "\n```\n"
                    + usage + "\n```\n";
            if (Boolean.getBoolean("ohmloom.update")) {
                Files.writeString(page, text);
            } else if (!before.equals(text)) {
                wrong.put(each.getKey(), text);
            }
        }
        assertEquals(Map.of(), wrong);
    }
}
