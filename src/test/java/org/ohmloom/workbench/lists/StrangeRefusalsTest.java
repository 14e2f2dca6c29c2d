package org.ohmloom.workbench.lists;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.datatransfer.StringSelection;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.TransferHandler;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.store.HarnessText;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.desk.CalculationStatus;
import org.ohmloom.workbench.sheet.SheetTable;
import org.ohmloom.workbench.words.InStrangeLanguage;
import org.ohmloom.workbench.words.PlainWords;

/** What is refused where a person typed, pasted or opened something is said in the language of the display. */
@ExtendWith(InStrangeLanguage.class)
class StrangeRefusalsTest {

    private static final int CONDUCTOR = 3;

    private Stage stage;

    @BeforeEach
    void strange() {
        stage = new Stage().openExample("teaching");
    }

    @Test
    void aBlockWithCellsThatDoNotFit() {
        List<String> problems = new ArrayList<>();
        OnEventThread.run(() -> {
            SheetTable wires = stage.view.lists().front();
            wires.previewBy((owner, changes) -> {
                changes.cells().forEach(cell -> problems.add(cell.problem()));
                return Optional.empty();
            });
            wires.changeSelection(0, CONDUCTOR, false, false);
            String block = "fat\t-2 m\n99 AWG\t3 V\n900 mm2\t1,234\n2.5\ttwo\n";
            wires.getTransferHandler()
                    .importData(new TransferHandler.TransferSupport(wires, new StringSelection(block)));
        });
        assertEquals(8, problems.size());
        problems.subList(0, 6).forEach(each -> assertStrange(each, "fat two"));
    }

    @Test
    void aFileThatIsCutOrIsNoHarness(@TempDir Path folder) throws IOException {
        String whole = HarnessText.write(stage.desk().harness().orElseThrow());
        List<String> broken = List.of(
                whole.substring(0, whole.length() / 2),
                "",
                "{}",
                whole.replaceFirst("\"lengthMetres\": [0-9.]+", "\"lengthMetres\": -1"),
                whole.replaceFirst("\"lengthMetres\": [0-9.]+", "\"lengthMetres\": \"long\""),
                whole.replaceFirst("\"component\": \"[^\"]+\"", "\"component\": \"X99\""));
        for (String text : broken) {
            Path file = Files.writeString(folder.resolve("broken.harness.json"), text);
            int before = stage.prompts.asked.size();
            OnEventThread.run(() -> stage.view.filing().open(file));
            OnEventThread.await("a refusal", () -> stage.prompts.asked.size() > before);
            assertStrange(
                    stage.prompts.asked.get(before).replace(file.toString(), ""),
                    whole + " kind version format lengthMetres long");
        }
    }

    @Test
    void aHarnessThatNamesWhatNoTableHasAndATableThatIsMalformed(@TempDir Path folder) throws IOException {
        String whole = HarnessText.write(stage.desk().harness().orElseThrow());
        Path tables = Files.createDirectory(folder.resolve("wire-tables"));
        Path file = Files.writeString(
                folder.resolve("unknown.harness.json"), whole.replaceFirst("(\"basis\": \")[^\"]+", "$1no-such"));
        OnEventThread.run(() -> stage.view.filing().open(file));
        awaitRefusal("no-such");
        assertStrange(stage.desk().status().details(), whole + " rules basis such");

        Files.writeString(tables.resolve("own.csv"), "# source: mine\n");
        Path beside = Files.writeString(folder.resolve("beside.harness.json"), whole);
        OnEventThread.run(() -> stage.view.filing().open(beside));
        awaitRefusal("own.csv");
        assertStrange(stage.desk().status().details(), "edition");
    }

    private void awaitRefusal(String with) {
        OnEventThread.await(
                "a refusal",
                () -> stage.desk().status().kind() == CalculationStatus.Kind.NOT_POSSIBLE
                        && stage.desk().status().details().contains(with));
    }

    /** Nothing of it is English but what was typed or stands in the file. */
    private static void assertStrange(String said, String typed) {
        assertTrue(said.contains("["), said);
        assertEquals(Set.of(), new PlainWords(typed).in(said), said);
    }
}
