package org.ohmloom.workbench;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/** Begins a comparison with another revision and brings what differs to the front. */
final class CompareCommands {

    private CompareCommands() {}

    /** One of them; the pane it works on is handed over when it is there. */
    static final class Compare extends Command {

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

        void workOn(ComparePane compared) {
            pane = Optional.of(compared);
        }

        @Override
        void run() {
            pane.ifPresent(compared -> task.accept(desk, Reveal.inFront(compared)));
        }

        @Override
        void refresh() {
            setReady(desk.document().isPresent(), "no harness is open");
        }
    }

    /** With a file, and with what was saved. */
    static List<Compare> of(Desk desk, Prompts prompts) {
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
                        "compare-saved",
                        "Changes since saved",
                        "Show what was changed since the harness was saved",
                        'G',
                        desk,
                        (on, pane) -> pane.compareWithSaved()));
    }
}
