package org.ohmloom.workbench.window;

import com.formdev.flatlaf.util.SystemFileChooser;
import java.awt.Component;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JDialog;
import javax.swing.JOptionPane;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.Prompts;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** Asks in dialogs over the window. */
public final class WindowPrompts implements Prompts {
    private static final Words WORDS = Words.of("window");

    private static final int COLUMNS = 64;

    private final Supplier<Component> parent;

    /**
     * Prompts.
     *
     * @param parent the window the dialogs belong to
     */
    public WindowPrompts(Supplier<Component> parent) {
        this.parent = parent;
    }

    @Override
    public Optional<Path> fileToOpen(Optional<Path> folder) {
        SystemFileChooser chooser = chooser(folder);
        chooser.setDialogTitle(WORDS.get("window-prompts.open-a-harness-file"));
        return opened(chooser);
    }

    @Override
    public Optional<Path> fileToSave(Optional<Path> folder, String suggestedName) {
        SystemFileChooser chooser = chooser(folder);
        chooser.setDialogTitle(WORDS.get("window-prompts.save-the-harness"));
        File directory = chooser.getCurrentDirectory();
        chooser.setSelectedFile(new File(directory, suggestedName + HarnessFiles.ENDING));
        chooser.setApproveCallback((chosen, context) -> mayReplace(chosen[0].toPath(), context)
                ? SystemFileChooser.APPROVE_OPTION
                : SystemFileChooser.CANCEL_OPTION);
        return saved(chooser);
    }

    private static boolean mayReplace(Path chosen, SystemFileChooser.ApproveContext context) {
        String name = String.valueOf(chosen.getFileName());
        Path target = name.endsWith(HarnessFiles.ENDING) ? chosen : chosen.resolveSibling(name + HarnessFiles.ENDING);
        if (!Files.exists(target)) {
            return true;
        }
        int answer = context.showMessageDialog(
                JOptionPane.WARNING_MESSAGE,
                WORDS.get("window-prompts.replace", target.getFileName()),
                WORDS.get("window-prompts.replace.about"),
                1,
                WORDS.get("window-prompts.replace-2"),
                WORDS.get("window-prompts.replace-2.about"));
        return answer == 0;
    }

    @Override
    public Optional<Path> tableToTakeIn(Optional<Path> folder) {
        SystemFileChooser chooser = chooserAt(folder);
        chooser.addChoosableFileFilter(new SystemFileChooser.FileNameExtensionFilter(
                WORDS.get("window-prompts.tables-of-a-test"), "csv", "txt"));
        chooser.setDialogTitle(WORDS.get("window-prompts.take-in-a-filled"));
        return opened(chooser);
    }

    @Override
    public Optional<Path> unitSheet(Optional<Path> folder) {
        return opened(unitChooser(folder));
    }

    @Override
    public Optional<Path> fileForUnitSheet(Optional<Path> folder, String suggestedName) {
        SystemFileChooser chooser = unitChooser(folder);
        chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), suggestedName + ".csv"));
        return saved(chooser);
    }

    private static SystemFileChooser unitChooser(Optional<Path> folder) {
        SystemFileChooser chooser = chooserAt(folder);
        chooser.addChoosableFileFilter(new SystemFileChooser.FileNameExtensionFilter(
                WORDS.get("window-prompts.sheets-of-control-units"), "csv"));
        chooser.setDialogTitle(WORDS.get("window-prompts.sheet-of-a-control"));
        return chooser;
    }

    @Override
    public Optional<Path> fileToCompare(Optional<Path> folder) {
        SystemFileChooser chooser = chooser(folder);
        chooser.setDialogTitle(WORDS.get("window-prompts.compare-with-the-old"));
        return opened(chooser);
    }

    @Override
    public Optional<Path> folderForPack(Optional<Path> folder) {
        return folderFor(folder, WORDS.get("window-prompts.folder-for-the-build"));
    }

    @Override
    public Optional<Path> folderForChangeSheet(Optional<Path> folder) {
        return folderFor(folder, WORDS.get("window-prompts.folder-for-the-change"));
    }

    private Optional<Path> folderFor(Optional<Path> folder, String title) {
        SystemFileChooser chooser = chooserAt(folder);
        chooser.setFileSelectionMode(SystemFileChooser.DIRECTORIES_ONLY);
        chooser.setDialogTitle(title);
        return opened(chooser);
    }

    @Override
    public Unsaved unsavedChanges(String name) {
        int answer = ask(
                WORDS.get("window-prompts.save-the-changes-to", name),
                WORDS.get("window-prompts.save-the-changes-to.about"),
                List.of(
                        WORDS.get("window-prompts.save"),
                        WORDS.get("window-prompts.discard"),
                        WORDS.get("window-prompts.cancel")));
        return switch (answer) {
            case 0 -> Unsaved.SAVE;
            case 1 -> Unsaved.DISCARD;
            default -> Unsaved.CANCEL;
        };
    }

    @Override
    public SideCopy sideCopy(Document copy) {
        Words words = Words.of("side-copy");
        String original = copy.original().map(Document::name).orElse(copy.name());
        String changes = TradeWords.count(copy.session().stepsDone(), "change");
        if (!copy.canBeKept()) {
            int answer = ask(
                    words.get("settle.title", original),
                    words.get("settle.moved", original),
                    List.of(words.get("settle.drop"), words.get("settle.cancel")));
            return answer == 0 ? SideCopy.DROP : SideCopy.CANCEL;
        }
        int answer = ask(
                words.get("settle.title", original),
                words.get("settle", original, changes),
                List.of(words.get("settle.keep"), words.get("settle.drop"), words.get("settle.cancel")));
        return switch (answer) {
            case 0 -> SideCopy.KEEP;
            case 1 -> SideCopy.DROP;
            default -> SideCopy.CANCEL;
        };
    }

    @Override
    public ChangedOnDisk changedOnDisk(String name, String sentence) {
        Words words = Words.of("disk");
        int answer = ask(
                words.get("save.title", name),
                sentence,
                List.of(
                        words.get("compare"),
                        words.get("save.replace"),
                        words.get("read-again"),
                        words.get("save.other-name"),
                        words.get("save.cancel")));
        return switch (answer) {
            case 0 -> ChangedOnDisk.COMPARE;
            case 1 -> ChangedOnDisk.REPLACE;
            case 2 -> ChangedOnDisk.READ_AGAIN;
            case 3 -> ChangedOnDisk.SAVE_UNDER_ANOTHER_NAME;
            default -> ChangedOnDisk.CANCEL;
        };
    }

    @Override
    public void problem(String title, String sentence) {
        JOptionPane.showMessageDialog(
                parent.get(), DialogText.of(title, sentence, COLUMNS), "Ohmloom", JOptionPane.WARNING_MESSAGE);
    }

    @Override
    public SlowSave slowSave(String name, Consumer<Runnable> closing) {
        Words words = Words.of("windows");
        List<String> answers =
                List.of(words.get("slow-save.wait"), words.get("slow-save.leave"), words.get("slow-save.stay"));
        JOptionPane question = new JOptionPane(
                HelpPage.name(
                        DialogText.of(words.get("slow-save.title", name), words.get("slow-save"), COLUMNS),
                        "dialogs/saving"),
                JOptionPane.QUESTION_MESSAGE,
                JOptionPane.DEFAULT_OPTION,
                null,
                answers.toArray(),
                answers.get(0));
        JDialog dialog = question.createDialog(parent.get(), "Ohmloom");
        closing.accept(dialog::dispose);
        dialog.setVisible(true);
        dialog.dispose();
        return switch (answers.indexOf(question.getValue())) {
            case 1 -> SlowSave.LEAVE;
            case 2 -> SlowSave.STAY;
            default -> SlowSave.WAIT;
        };
    }

    private int ask(String title, String sentence, List<String> answers) {
        return JOptionPane.showOptionDialog(
                parent.get(),
                HelpPage.name(DialogText.of(title, sentence, COLUMNS), "dialogs/saving"),
                "Ohmloom",
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.QUESTION_MESSAGE,
                null,
                answers.toArray(),
                answers.get(0));
    }

    private Optional<Path> opened(SystemFileChooser chooser) {
        return chosen(chooser, chooser.showOpenDialog(parent.get()));
    }

    private Optional<Path> saved(SystemFileChooser chooser) {
        return chosen(chooser, chooser.showSaveDialog(parent.get()));
    }

    private static Optional<Path> chosen(SystemFileChooser chooser, int answer) {
        return answer == SystemFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath())
                : Optional.empty();
    }

    private static SystemFileChooser chooserAt(Optional<Path> folder) {
        SystemFileChooser chooser = new SystemFileChooser();
        folder.filter(Files::isDirectory).ifPresent(found -> chooser.setCurrentDirectory(found.toFile()));
        return chooser;
    }

    private static SystemFileChooser chooser(Optional<Path> folder) {
        SystemFileChooser chooser = chooserAt(folder);
        chooser.addChoosableFileFilter(new SystemFileChooser.FileNameExtensionFilter(
                WORDS.get("window-prompts.harness-files-harness-json"), "json"));
        return chooser;
    }
}
