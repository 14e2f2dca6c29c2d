package org.ohmloom.workbench.compare;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import javax.swing.JButton;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.revision.Change;
import org.ohmloom.analysis.revision.RevisionComparison;
import org.ohmloom.model.Harness;
import org.ohmloom.pack.ChangeSheet;
import org.ohmloom.pack.PackException;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Calculation;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.LatestWins;
import org.ohmloom.workbench.desk.Services;
import org.ohmloom.workbench.sheet.SheetTable;
import org.ohmloom.workbench.study.StudyTab;
import org.ohmloom.workbench.study.TabName;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/**
 * What differs from another revision: elements, parts, numbers, findings. The other revision is read and calculated on a thread of
 * its own; choosing a line selects what it is about.
 */
public final class ComparePane extends StudyTab {
    private static final Words WORDS = Words.of("revision");

    private static final long serialVersionUID = 1L;

    /** Key of the tab. */
    public static final String KEY = "revision";

    private final transient Desk desk;
    private final transient Services services;
    private final transient LatestWins<Asked, Compared> comparer;
    private final JButton stop = new JButton(WORDS.get("compare.stop"));
    private final JButton write = new JButton(WORDS.get("compare.write-change-sheet"));
    private final ComparedHead head;
    private final ComparedTabs tabs;
    private transient Optional<Compared> shown = Optional.empty();
    private transient Optional<Document> comparedFor = Optional.empty();

    /**
     * What is to be compared.
     *
     * @param file    file of the old revision; empty for a harness in memory
     * @param old     the old revision where it is in no file
     * @param name    what people call the old revision
     * @param now     the harness as it is
     * @param nowFile the file it lives in
     * @param known   its results, where they are there already
     */
    private record Asked(
            Optional<Path> file,
            Optional<Harness> old,
            String name,
            Harness now,
            Optional<Path> nowFile,
            Optional<Analysis> known) {}

    public ComparePane(Desk desk, Services services, Samples samples, List<Command> commands) {
        super(new MigLayout("insets 0, fill, gap 0, wrap 1"), TabName.of(KEY));
        this.desk = desk;
        this.services = services;
        this.comparer = new LatestWins<>(
                "revision compare",
                (asked, cancel, soFar) -> compared(asked, cancel),
                Duration.ZERO,
                services.eventThread(),
                this::receive);
        this.tabs = new ComparedTabs(desk, samples, KEY, () -> shown);
        write.setName("revision-write");
        write.addActionListener(event -> write());
        stop.setName("revision-stop");
        stop.addActionListener(event -> stop());
        head = new ComparedHead(KEY, commands, write, stop);
        add(head, "growx");
        add(tabs, "grow, push, hmin 60");
        refresh();
    }

    private Optional<RevisionComparison> comparison() {
        return shown.map(Compared::comparison);
    }

    /** Compares with the old revision in a file. */
    void compareWith(Path file) {
        ask(Optional.of(file), Optional.empty(), String.valueOf(file.getFileName()));
    }

    /** Compares with what was saved last: the file as it is on disk, or what was opened where there is no file yet. */
    void compareWithSaved() {
        desk.document()
                .ifPresent(document -> ask(
                        document.file(),
                        document.file().isPresent()
                                ? Optional.empty()
                                : Optional.of(document.session().saved()),
                        WORDS.get("compare.what-was-saved")));
    }

    private void ask(Optional<Path> file, Optional<Harness> old, String name) {
        desk.harness().ifPresent(now -> {
            forgetOfAnother();
            Optional<Analysis> known = desk.isWhole() ? desk.analysis() : Optional.empty();
            comparer.ask(new Asked(file, old, name, now, desk.document().flatMap(Document::tablesBeside), known));
            refresh();
        });
    }

    /** Whether a comparison is under way. */
    public boolean isBusy() {
        return comparer.isBusy();
    }

    /** Stops the comparison under way. */
    void stop() {
        comparer.stop();
        desk.say(WORDS.get("compare.comparison-stopped"));
        refresh();
    }

    private Compared compared(Asked asked, Cancel cancel) {
        Harness old = asked.old().orElseGet(() -> read(asked.file().orElseThrow()));
        Analysis before = services.calculation().of(new Calculation.Question(old, asked.file()), cancel, soFar -> {});
        Analysis after = asked.known().orElseGet(() -> services.calculation()
                .of(new Calculation.Question(asked.now(), asked.nowFile()), cancel, soFar -> {}));
        cancel.check();
        return Compared.of(asked.name(), before, after);
    }

    private static Harness read(Path file) {
        try {
            return HarnessFiles.read(file);
        } catch (HarnessFileException broken) {
            throw new IllegalArgumentException(broken.getMessage(), broken);
        }
    }

    private void receive(LatestWins.Outcome<Asked, Compared> outcome) {
        if (outcome.answer().isPresent()) {
            shown = outcome.answer();
        } else if (outcome.failure()
                .filter(CancellationException.class::isInstance)
                .isEmpty()) {
            services.prompts()
                    .problem(
                            WORDS.get("compare.the-revisions-were-not"),
                            Words.said(outcome.failure().orElseThrow()));
        }
        refresh();
    }

    /** Asks for a folder and writes the change sheet into it. */
    void write() {
        Optional<Path> folder = desk.document().flatMap(Document::file).map(Path::getParent);
        comparison().ifPresent(comparison -> services.prompts()
                .folderForChangeSheet(folder)
                .ifPresent(chosen -> services.reader().execute(() -> write(comparison, chosen))));
    }

    private void write(RevisionComparison comparison, Path folder) {
        Executor eventThread = services.eventThread();
        try {
            List<Path> files = ChangeSheet.write(comparison, folder);
            eventThread.execute(() -> desk.say(
                    WORDS.get("compare.change-sheet-written-in", TradeWords.count(files.size(), "file"), folder)));
        } catch (PackException refused) {
            eventThread.execute(
                    () -> services.prompts().problem(WORDS.get("compare.the-change-sheet-was"), Words.said(refused)));
        }
    }

    /** The list of that place: elements, parts, numbers, findings. */
    SheetTable table(int place) {
        return tabs.table(place);
    }

    /** What is said above the lists. */
    String summaryText() {
        return head.said();
    }

    @Override
    public JComponent front() {
        return tabs.front();
    }

    @Override
    public void showRows() {
        refresh();
    }

    @Override
    public void showSelection() {}

    /** What was compared of a document that lies on the desk no more says nothing about this one. */
    private void forgetOfAnother() {
        Optional<Document> now = desk.document().map(open -> open.original().orElse(open));
        if (!now.equals(comparedFor)) {
            comparedFor = now;
            comparer.stop();
            shown = Optional.empty();
        }
    }

    private void refresh() {
        forgetOfAnother();
        tabs.refresh();
        boolean busy = comparer.isBusy();
        stop.setVisible(busy);
        write.setEnabled(shown.isPresent() && !busy);
        write.setToolTipText(
                shown.isPresent() ? WORDS.get("compare.write-what-differs-as") : WORDS.get("compare.compare-first"));
        head.say(
                busy
                        ? WORDS.get("compare.reading-and-calculating-the")
                        : shown.map(this::words).orElse(hintText()));
    }

    private String words(Compared compared) {
        RevisionComparison comparison = compared.comparison();
        String old = desk.harness()
                        .filter(now -> now == comparison.after().harness())
                        .isPresent()
                ? ""
                : WORDS.get("compare.outdated-the-harness-has");
        if (comparison.isSame()) {
            return WORDS.get("compare.the-same-as", old, compared.name());
        }
        return WORDS.get(
                "compare.from-added-removed-changed",
                old,
                compared.name(),
                comparison.count(Change.ADDED),
                comparison.count(Change.REMOVED),
                comparison.count(Change.CHANGED),
                comparison.count(Change.RENUMBERED));
    }

    private static String hintText() {
        return WORDS.get("compare.compare-the-harness-with");
    }
}
