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

/** Begins a comparison with another revision and brings what differs to the front. */
public final class CompareCommands {

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
            pane.ifPresent(compared -> task.accept(desk, Reveal.inFront(compared)));
        }

        @Override
        public void refresh() {
            boolean compared = id().equals(SAVED) && desk.isSideCopy();
            setReady(
                    desk.document().isPresent() && !compared,
                    compared ? "What if shows what the side copy changes" : "no harness is open");
        }
    }

    /** With a file, and with what was saved. */
    public static List<Compare> of(Desk desk, Prompts prompts) {
        return List.of(
                new Compare(
                        "compare-file",
                        "Compare with a file…",
                        "Show what differs from an old revision in another file",
                        'M',
                        desk,
                        (on, pane) -> {
                            Optional<Path> folder =
                                    on.document().flatMap(Document::file).map(Path::getParent);
                            prompts.fileToCompare(folder).ifPresent(pane::compareWith);
                        }),
                new Compare(
                        SAVED,
                        "Changes since saved",
                        "Show what was changed since the harness was saved",
                        'G',
                        desk,
                        (on, pane) -> pane.compareWithSaved()));
    }
}
