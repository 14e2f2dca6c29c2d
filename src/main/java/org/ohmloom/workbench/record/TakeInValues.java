package org.ohmloom.workbench.record;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import org.ohmloom.bench.record.FilledSheet;
import org.ohmloom.bench.record.RecordDefaults;
import org.ohmloom.bench.record.RecordRefusedException;
import org.ohmloom.edit.PutElements;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.store.CsvTable;
import org.ohmloom.store.CsvTableException;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.Prompts;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** Takes the values of a filled-in test sheet into the as-built record as one edit; the file is read on a thread of its own. */
public final class TakeInValues extends Command {
    private static final Words WORDS = Words.of("as-built");

    private static final long serialVersionUID = 1L;
    private static final int MOST_LINES_TOLD = 12;

    private final transient Desk desk;
    private final transient Prompts prompts;
    private final transient Executor reader;
    private final transient Executor eventThread;
    private transient Optional<RecordPane> pane = Optional.empty();

    public TakeInValues(Desk desk, Prompts prompts, Executor reader, Executor eventThread) {
        super(
                "take-in-values",
                WORDS.get("take-in-values.take-in-measured-values"),
                WORDS.get("take-in-values.take-in-measured-values.about"));
        this.desk = desk;
        this.prompts = prompts;
        this.reader = reader;
        this.eventThread = eventThread;
        withMnemonic('V');
        refresh();
    }

    /** What holds for lines that do not say it themselves is what is set there. */
    public void fillFrom(RecordPane record) {
        pane = Optional.of(record);
    }

    @Override
    public void run() {
        Optional<Path> folder = desk.document().flatMap(Document::file).map(Path::getParent);
        prompts.tableToTakeIn(folder).ifPresent(file -> reader.execute(() -> read(file)));
    }

    private void read(Path file) {
        try {
            CsvTable table = CsvTable.read(file);
            eventThread.execute(() -> take(table, file));
        } catch (CsvTableException unreadable) {
            eventThread.execute(
                    () -> prompts.problem(WORDS.get("take-in-values.no-values-were-taken"), Words.said(unreadable)));
        }
    }

    private void take(CsvTable table, Path file) {
        desk.harness().ifPresent(harness -> take(table, file, harness));
    }

    private void take(CsvTable table, Path file, Harness harness) {
        RecordSettings settings = pane.map(RecordPane::settings).orElse(RecordSettings.NONE);
        try {
            FilledSheet sheet = FilledSheet.of(
                    table,
                    harness,
                    new RecordDefaults(
                            settings.serialNumber(),
                            Optional.of(harness.titleBlock().currentRevision()).filter(text -> !text.isBlank()),
                            settings.celsius(),
                            settings.instrument(),
                            settings.by(),
                            settings.date(),
                            Optional.empty()));
            String taken = TradeWords.count(sheet.readings().size(), "reading");
            desk.apply(new PutElements(
                    WORDS.text("take-in-values.take-in", taken), List.<Element>copyOf(sheet.readings())));
            desk.say(WORDS.get(
                    "take-in-values.taken-without-a-value",
                    file.getFileName(),
                    taken,
                    TradeWords.count(sheet.blanks(), "line"),
                    sheet.leftOut().isEmpty()
                            ? ""
                            : WORDS.get("take-in-values.columns-left-out", String.join(", ", sheet.leftOut()))));
            sheet.readings().stream()
                    .findFirst()
                    .ifPresent(first -> pane.ifPresent(
                            record -> record.showSerial(first.serialNumber().orElse(""))));
        } catch (RecordRefusedException refused) {
            List<String> lines = refused.lines().stream().map(Words::said).toList();
            String more = lines.size() > MOST_LINES_TOLD
                    ? WORDS.get("take-in-values.and-more", (lines.size() - MOST_LINES_TOLD))
                    : "";
            prompts.problem(
                    WORDS.get("take-in-values.no-values-were-taken"),
                    String.join("\n", lines.subList(0, Math.min(MOST_LINES_TOLD, lines.size()))) + more);
        } catch (IllegalArgumentException refused) {
            prompts.problem(WORDS.get("take-in-values.no-values-were-taken"), Words.said(refused));
        }
    }

    @Override
    public void refresh() {
        setReady(desk.document().isPresent(), WORDS.get("take-in-values.no-harness-is-open"));
    }
}
