package org.ohmloom.workbench.manual;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.bench.Studies;
import org.ohmloom.workbench.fabrication.FabricationPane;
import org.ohmloom.workbench.lists.ListsPane;
import org.ohmloom.workbench.record.RecordPane;
import org.ohmloom.workbench.sheet.Adding;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.Sheet;
import org.ohmloom.workbench.study.Study;
import org.ohmloom.workbench.study.TolerancePane;

/**
 * Pages of the manual about a view or a list end with its columns as they are. After a change of a column,
 * {@code mvn test -Dtest=ColumnPagesTest -Dohmloom.update=true} writes these ends anew.
 */
class ColumnPagesTest {

    private static final Path PAGES = Path.of("src/main/resources/org/ohmloom/manual");
    private static final String HEAD = "## Columns\n";

    @Test
    void everyPageAboutAListEndsWithItsColumnsAsTheyAre() throws IOException {
        Map<String, String> wrong = new TreeMap<>();
        for (Map.Entry<String, List<Sheet<?>>> each : listed().entrySet()) {
            Path page = PAGES.resolve(each.getKey() + ".md");
            String before = Files.readString(page);
            int at = before.indexOf(HEAD);
            String text =
                    (at < 0 ? before.stripTrailing() + "\n\n" : before.substring(0, at)) + columns(each.getValue());
            if (Boolean.getBoolean("ohmloom.update")) {
                Files.writeString(page, text);
            } else if (!before.equals(text)) {
                wrong.put(each.getKey(), text);
            }
        }
        assertEquals(Map.of(), wrong);
    }

    /** The lists of every page that tells about some. */
    private static Map<String, List<Sheet<?>>> listed() {
        Stage stage = new Stage();
        Map<String, List<Sheet<?>>> listed = new LinkedHashMap<>();
        ListsPane.sheets(stage.desk()).forEach((key, sheet) -> listed.put("lists/" + key, List.of(sheet)));
        for (Study<?> study : Studies.ALL) {
            listed.put("views/" + study.key(), List.of(study));
        }
        for (Study<?> study : Studies.RETURNS) {
            listed.put("views/" + study.key(), List.of(study));
        }
        listed.put("views/fabrication", FabricationPane.sheets());
        RecordPane record = (RecordPane) stage.view.viewTabs().study(RecordPane.KEY);
        listed.put("views/as-built", List.of(record.sheet()));
        TolerancePane tolerance = (TolerancePane) stage.view.viewTabs().study(TolerancePane.KEY);
        listed.put("views/tolerance", List.of(tolerance.sheet()));
        return listed;
    }

    private static String columns(List<Sheet<?>> sheets) {
        StringBuilder text = new StringBuilder(HEAD);
        for (Sheet<?> sheet : sheets) {
            if (sheets.size() > 1) {
                text.append("\n### ").append(sheet.title()).append('\n');
            }
            text.append("\n| column | unit | what it holds | typed in | shown |\n|---|---|---|---|---|\n");
            sheet.columns().forEach(column -> text.append(row(column)));
            if (!sheet.adds().isEmpty()) {
                text.append("\n**Add** puts in: ")
                        .append(sheet.adds().stream().map(Adding::words).collect(Collectors.joining(", ")))
                        .append(".\n");
            }
        }
        return text.toString();
    }

    private static String row(Column<?> column) {
        return "| " + cell(column.title()) + " | " + cell(column.unit()) + " | " + cell(column.tip()) + " | "
                + (column.edit().isPresent() ? "yes" : "") + " | " + (column.detail() ? "when chosen" : "always")
                + " |\n";
    }

    private static String cell(String text) {
        return text.replace("|", "\\|").replace("*", "\\*").replace("<", "\\<");
    }
}
