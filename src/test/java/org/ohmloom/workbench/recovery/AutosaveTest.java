package org.ohmloom.workbench.recovery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.model.WireId;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.store.HarnessText;
import org.ohmloom.store.RecoveryFolder;
import org.ohmloom.store.RecoverySnapshot;
import org.ohmloom.units.Gauge;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.Prompts;
import org.ohmloom.workbench.desk.Saves;
import org.ohmloom.workbench.desk.Services;

/** Edits are kept aside until they are saved or discarded, and offered after the program was killed. */
class AutosaveTest {

    private static final Clock NOON = Clock.fixed(Instant.parse("2026-01-05T12:00:00Z"), ZoneOffset.UTC);
    private static final int LOOKS = 600;
    private static final int BETWEEN_LOOKS_MILLIS = 50;

    @TempDir
    private Path folder;

    private RecoveryFolder kept() {
        return new RecoveryFolder(folder.resolve("recovery"), owner -> false);
    }

    private Autosave autosave(Stage stage) {
        return OnEventThread.get(
                () -> new Autosave(stage.desk(), stage.services().saves(), kept(), Runnable::run, NOON, 1));
    }

    @Test
    void aProgramKilledWhileItEditsLeavesItsEditsToBeRestoredAsACopy() throws Exception {
        Path file = folder.resolve("teaching.harness.json");
        Files.copy(Path.of("examples", "teaching.harness.json"), file);
        byte[] before = Files.readAllBytes(file);
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Djava.awt.headless=true",
                        "-D" + RecoveryPlace.PROPERTY + "=" + folder,
                        "-cp",
                        System.getProperty("java.class.path"),
                        AutosaveRun.class.getName(),
                        "1",
                        file.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("output.txt").toFile())
                .start();
        try {
            await(() -> !kept().left().isEmpty());
            assertTrue(RecoveryPlace.runs(kept().left().get(0).owner()), "it still runs and keeps its own affairs");
        } finally {
            program.destroyForcibly().waitFor();
        }
        RecoveryFolder folderNow = new RecoveryFolder(folder.resolve("recovery"), RecoveryPlace::runs);
        RecoverySnapshot left = folderNow.left().get(0);
        assertEquals("teaching", left.name());
        assertTrue(left.changes() >= 1);

        List<Document> opened = new ArrayList<>();
        new Recovery(folderNow, Runnable::run, Runnable::run)
                .offer((snapshot, size) -> Recovery.Answer.RESTORE, opened::add, () -> {}, problem -> fail(problem));
        Document copy = opened.get(0);
        double metres =
                copy.harness().wires().get(new WireId("W4")).lengthMetres().orElseThrow();
        assertTrue(metres > 1, "the example has 1 m; the edits made it longer: " + metres);
        assertEquals(Optional.empty(), copy.file());
        assertTrue(copy.session().isChanged());
        copy.session().undo();
        assertEquals(HarnessText.write(HarnessFiles.read(file)), HarnessText.write(copy.harness()));
        assertEquals(new String(before), Files.readString(file), "the file itself is not touched");
        assertEquals(List.of(), folderNow.left());
        assertTrue(Files.exists(folder.resolve("recovery").resolve("restored")));
    }

    @Test
    void whateverMomentAProgramIsKilledWhatWasKeptIsOffered() throws Exception {
        KillEditsRun run = new KillEditsRun(folder);
        run.run(1);
        assertEquals(1, run.done());
    }

    @Test
    void anEditIsKeptAtOnceAndWhatIsMadeMeanwhileInOneCopyAfterIt() throws Exception {
        Path file = folder.resolve("teaching.harness.json");
        Files.copy(Path.of("examples", "teaching.harness.json"), file);
        Queue<Runnable> writing = new ConcurrentLinkedQueue<>();
        Stage stage = new Stage();
        OnEventThread.run(() -> {
            new Autosave(stage.desk(), stage.services().saves(), kept(), writing::add, NOON, 1);
        });
        Document document = Document.read(file);
        OnEventThread.run(() -> stage.desk().open(document));
        edit(stage, 4);
        assertEquals(1, writing.size(), "without a pause");
        edit(stage, 6);
        edit(stage, 10);
        assertEquals(1, writing.size());
        writing.remove().run();
        assertEquals(Optional.of(Gauge.metric(4)), sizeKept("teaching"));
        OnEventThread.await("the copy after", () -> writing.size() == 1);
        // taken back to the file and brought back: forgotten, and kept anew
        OnEventThread.run(() -> document.session().goTo(0));
        OnEventThread.run(() -> document.session().goTo(3));
        writing.remove().run();
        writing.remove().run();
        assertEquals(Set.of(), names());
        OnEventThread.await("kept anew", () -> writing.size() == 1);
        writing.remove().run();
        assertEquals(Optional.of(Gauge.metric(10)), sizeKept("teaching"));
        OnEventThread.run(() -> assertEquals(0, writing.size()));
    }

    @Test
    void anEditIsKeptUntilItIsTakenBackSavedOrClosed() throws Exception {
        Path file = folder.resolve("teaching.harness.json");
        Files.copy(Path.of("examples", "teaching.harness.json"), file);
        Stage stage = new Stage();
        Autosave autosave = autosave(stage);
        Document document = Document.read(file);
        OnEventThread.run(() -> stage.desk().open(document));
        assertEquals(List.of(), kept().left());

        edit(stage, 6);
        OnEventThread.await("kept", () -> kept().left().size() == 1);
        assertEquals(NOON.instant(), kept().left().get(0).at());
        OnEventThread.run(() -> document.session().undo());
        assertEquals(List.of(), kept().left());

        edit(stage, 4);
        OnEventThread.await("kept again", () -> kept().left().size() == 1);
        assertTrue(stage.answer(stage.view.filing()::save));
        assertEquals(List.of(), kept().left());

        edit(stage, 10);
        OnEventThread.await("kept once more", () -> kept().left().size() == 1);
        OnEventThread.run(autosave::close);
        assertEquals(List.of(), kept().left());
    }

    @Test
    void leftWhileItsSaveDoesNotComeBackItStaysKeptUntilItDoes() throws Exception {
        Path file = folder.resolve("teaching.harness.json");
        Files.copy(Path.of("examples", "teaching.harness.json"), file);
        Path other = folder.resolve("other.harness.json");
        Files.copy(file, other);
        Queue<Runnable> writing = new ConcurrentLinkedQueue<>();
        Stage stage = Stage.builtOn(own -> new Services(
                own.calculation(),
                own.layout(),
                own.painter(),
                own.preferences(),
                own.prompts(),
                own.reader(),
                own.eventThread(),
                own.documents(),
                new Saves(writing::add, own.eventThread(), own.eventThread())));
        stage.prompts.slowSave = Prompts.SlowSave.LEAVE;
        autosave(stage);
        Document document = Document.read(file);
        OnEventThread.run(() -> stage.desk().open(document));
        edit(stage, 6);
        OnEventThread.run(() -> stage.view.filing().save());
        assertTrue(stage.answer(stage.view.filing()::close));
        assertEquals(Set.of("teaching"), names());
        assertEquals(Optional.of(Gauge.metric(6)), sizeKept("teaching"));

        Document next = Document.read(other);
        OnEventThread.run(() -> stage.desk().open(next));
        edit(stage, 10);
        OnEventThread.await("both kept", () -> names().equals(Set.of("teaching", "other")));
        writing.remove().run();
        OnEventThread.await("saved after all", () -> names().equals(Set.of("other")));
    }

    @Test
    void aSideCopyIsKeptBesideItsOriginalUnderANameOfItsOwn() throws Exception {
        Path file = folder.resolve("teaching.harness.json");
        Files.copy(Path.of("examples", "teaching.harness.json"), file);
        Stage stage = new Stage();
        autosave(stage);
        Document original = Document.read(file);
        OnEventThread.run(() -> stage.desk().open(original));
        edit(stage, 6);
        OnEventThread.run(() -> stage.desk().beginSideCopy());
        assertEquals(Set.of("teaching"), names(), "the original is kept at once, before the copy takes its place");
        edit(stage, 10);
        OnEventThread.await("both kept", () -> kept().left().size() == 2);
        assertEquals(Set.of("teaching", "teaching (side copy)"), names());
        assertEquals(Optional.of(Gauge.metric(6)), sizeKept("teaching"));
        assertEquals(Optional.of(Gauge.metric(10)), sizeKept("teaching (side copy)"));

        // After a crash the copy is restored as a document of its own; the original still waits with what it said.
        List<Document> opened = new ArrayList<>();
        new Recovery(kept(), Runnable::run, Runnable::run)
                .offer(
                        (snapshot, size) -> snapshot.name().endsWith("(side copy)")
                                ? Recovery.Answer.RESTORE
                                : Recovery.Answer.LATER,
                        opened::add,
                        () -> {},
                        problem -> fail(problem));
        assertEquals("teaching (side copy) recovered", opened.get(0).name());
        assertEquals(Optional.empty(), opened.get(0).file());
        assertEquals(Set.of("teaching"), names());
        assertEquals(Optional.of(Gauge.metric(6)), sizeKept("teaching"));

        OnEventThread.run(() -> stage.desk().keepSideCopy());
        OnEventThread.await(
                "the original with what was kept",
                () -> names().equals(Set.of("teaching")) && sizeKept("teaching").equals(Optional.of(Gauge.metric(10))));
        OnEventThread.run(() -> stage.desk().beginSideCopy());
        edit(stage, 4);
        OnEventThread.await("both kept again", () -> kept().left().size() == 2);
        OnEventThread.run(() -> stage.desk().dropSideCopy());
        assertEquals(Set.of("teaching"), names());
        assertEquals(Optional.of(Gauge.metric(10)), sizeKept("teaching"));
        OnEventThread.run(() -> stage.desk().document().orElseThrow().session().goTo(0));
        assertEquals(Set.of(), names());
    }

    private Set<String> names() {
        return kept().left().stream().map(RecoverySnapshot::name).collect(Collectors.toSet());
    }

    private Optional<Gauge> sizeKept(String name) {
        try {
            RecoverySnapshot snapshot = kept().left().stream()
                    .filter(each -> each.name().equals(name))
                    .findFirst()
                    .orElseThrow();
            return kept().read(snapshot).wires().get(new WireId("W4")).gauge();
        } catch (HarnessFileException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    @Test
    void whatIsTheSameAsItsFileIsNeverOffered() throws Exception {
        Path file = folder.resolve("teaching.harness.json");
        Files.copy(Path.of("examples", "teaching.harness.json"), file);
        RecoverySnapshot same = new RecoverySnapshot("1", "stopped", "teaching", Optional.of(file), 1, NOON.instant());
        kept().keep(same, HarnessFiles.read(file));
        List<RecoverySnapshot> asked = new ArrayList<>();
        new Recovery(kept(), Runnable::run, Runnable::run)
                .offer(
                        (snapshot, size) -> {
                            asked.add(snapshot);
                            return Recovery.Answer.LATER;
                        },
                        document -> fail("nothing to open"),
                        () -> {},
                        problem -> fail(problem));
        assertEquals(List.of(), asked);
        assertEquals(List.of(), kept().left());
    }

    @Test
    void discardedIsForgottenAndLaterIsAskedAgain() throws Exception {
        RecoverySnapshot snapshot = new RecoverySnapshot("1", "stopped", "T", Optional.empty(), 1, NOON.instant());
        kept().keep(snapshot, HarnessFiles.read(Path.of("examples", "teaching.harness.json")));
        Recovery recovery = new Recovery(kept(), Runnable::run, Runnable::run);
        recovery.offer((each, size) -> Recovery.Answer.LATER, each -> fail(""), () -> {}, problem -> fail(problem));
        assertEquals(List.of(snapshot), kept().left());
        recovery.offer((each, size) -> Recovery.Answer.DISCARD, each -> fail(""), () -> {}, problem -> fail(problem));
        assertEquals(List.of(), kept().left());
    }

    @Test
    void theOwnerOfASnapshotIsAProgramAndItsStart() {
        assertTrue(RecoveryPlace.runs(RecoveryPlace.owner()));
        assertFalse(RecoveryPlace.runs(ProcessHandle.current().pid() + "@1"));
        assertFalse(RecoveryPlace.runs("nonsense"));
    }

    private static void edit(Stage stage, double areaMm2) {
        OnEventThread.run(() -> stage.desk().apply(SetWireGauge.of(new WireId("W4"), Gauge.metric(areaMm2))));
    }

    /** What is waited for. */
    @FunctionalInterface
    private interface Condition {
        boolean holds();
    }

    private static void await(Condition condition) throws InterruptedException {
        for (int look = 0; look < LOOKS; look++) {
            if (condition.holds()) {
                return;
            }
            Thread.sleep(BETWEEN_LOOKS_MILLIS);
        }
        fail("nothing was kept");
    }
}
