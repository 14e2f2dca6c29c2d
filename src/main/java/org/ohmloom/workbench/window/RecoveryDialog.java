package org.ohmloom.workbench.window;

import java.awt.Component;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JOptionPane;
import org.ohmloom.store.RecoverySnapshot;
import org.ohmloom.workbench.recovery.Recovery;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.words.Moment;
import org.ohmloom.workbench.words.Words;

/** Asks what to do with what a stopped program has left: its time, size and number of changes. */
public final class RecoveryDialog implements Recovery.Question {

    private static final int COLUMNS = 64;
    private static final long BYTES_IN_KB = 1000;

    private final Supplier<Component> parent;

    public RecoveryDialog(Supplier<Component> parent) {
        this.parent = parent;
    }

    @Override
    public Recovery.Answer ask(RecoverySnapshot snapshot, long sizeBytes) {
        Words words = Words.of("recovery");
        List<String> answers =
                List.of(words.get("restore"), words.get("compare"), words.get("discard"), words.get("later"));
        int answer = JOptionPane.showOptionDialog(
                parent.get(),
                HelpPage.name(
                        DialogText.of(
                                words.get("title", snapshot.name()), sentence(words, snapshot, sizeBytes), COLUMNS),
                        "dialogs/recovery"),
                "Ohmloom",
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.QUESTION_MESSAGE,
                null,
                answers.toArray(),
                answers.get(0));
        return switch (answer) {
            case 0 -> Recovery.Answer.RESTORE;
            case 1 -> Recovery.Answer.COMPARE;
            case 2 -> Recovery.Answer.DISCARD;
            default -> Recovery.Answer.LATER;
        };
    }

    static String sentence(Words words, RecoverySnapshot snapshot, long sizeBytes) {
        String from = snapshot.file()
                .map(file -> words.get("from-file", file.toString()))
                .orElse(words.get("no-file"));
        return words.get(
                "sentence",
                Moment.text(snapshot.at()),
                String.valueOf(snapshot.changes()),
                String.valueOf((sizeBytes + BYTES_IN_KB - 1) / BYTES_IN_KB),
                from);
    }
}
