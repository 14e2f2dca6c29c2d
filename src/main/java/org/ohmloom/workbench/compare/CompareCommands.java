package org.ohmloom.workbench.compare;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.Prompts;
import org.ohmloom.workbench.widget.Reveal;
import org.ohmloom.workbench.words.Words;

/** Begins a comparison with another revision and brings what differs to the front. */
public final class CompareCommands {
    private static final Words WORDS = Words.of("revision");

    private static final String SAVED = "compare-saved";

    private CompareCommands() {}

    /** One of them; the pane it works on is handed over when it is there. */
    public static final class Compare extends Command {

        private static final long serialVersionUID = 1L;

        private final transient Desk desk;
        private final transient BiConsumer<Desk, ComparePane> task;
        private transient Optional<ComparePane> pane = Optional.empty();

        Compare(String id, String name, String about, char letter, Desk desk, BiConsumer<Desk, ComparePane> task) {
            super(id, name, about);
            this.desk = desk;
            this.task = task;
            withMnemonic(letter);
            refresh();
        }

        public void workOn(ComparePane compared) {
            pane = Optional.of(compared);
        }

        @Override
        public void run() {
            pane.ifPresent(compared -> task.accept(desk, compared));
        }

        @Override
        public void refresh() {
            boolean compared = id().equals(SAVED) && desk.isSideCopy();
            setReady(
                    desk.document().isPresent() && !compared,
                    compared
                            ? WORDS.get("compare-commands.what-if-shows-what")
                            : WORDS.get("compare-commands.no-harness-is-open"));
        }
    }

    /** With a file, and with what was saved. */
    public static List<Compare> of(Desk desk, Prompts prompts) {
        return List.of(
                new Compare(
                        "compare-file",
                        WORDS.get("compare-commands.compare-with-a-file"),
                        WORDS.get("compare-commands.compare-with-a-file.about"),
                        'M',
                        desk,
                        (on, pane) -> {
                            Optional<Path> folder =
                                    on.document().flatMap(Document::file).map(Path::getParent);
                            prompts.fileToCompare(folder)
                                    .ifPresent(file -> Reveal.inFront(pane).compareWith(file));
                        }),
                new Compare(
                        SAVED,
                        WORDS.get("compare-commands.changes-since-saved"),
                        WORDS.get("compare-commands.changes-since-saved.about"),
                        'G',
                        desk,
                        (on, pane) -> Reveal.inFront(pane).compareWithSaved()));
    }
}
