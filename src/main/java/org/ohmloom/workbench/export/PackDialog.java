package org.ohmloom.workbench.export;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Dialog;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JTextField;
import javax.swing.WindowConstants;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Paper;
import org.ohmloom.draw.form.BoardSize;
import org.ohmloom.pack.BoardOptions;
import org.ohmloom.pack.PackDocument;
import org.ohmloom.pack.PackOptions;
import org.ohmloom.pack.PictureOptions;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.Prompts;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.PaneTitle;
import org.ohmloom.workbench.widget.TextUndo;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** Asks which documents of the build pack to write and where, then shows how far it got; Cancel stops it. */
public final class PackDialog extends JDialog {
    private static final Words WORDS = Words.of("export");

    private static final long serialVersionUID = 1L;
    private static final String FOLDER = "pack";
    /** Documents one below the other; the others stand beside them. */
    private static final int DOCUMENTS_DOWN = 8;

    private final transient Prompts prompts;
    private final transient PreferenceStore preferences;
    private final transient PackExport export;
    private final transient Desk desk;
    private final Map<PackDocument, JCheckBox> documents = new EnumMap<>(PackDocument.class);
    private final JComboBox<Paper> paper = new JComboBox<>(Paper.values());
    private final JCheckBox monochrome = new JCheckBox(WORDS.get("pack.black-and-greys-only"));
    private final JCheckBox remedies = new JCheckBox(WORDS.get("pack.try-remedies-for-findings"));
    private final JCheckBox perAssembly = new JCheckBox(WORDS.get("pack.also-a-pack-of"));
    private final JCheckBox svg = new JCheckBox("SVG", PictureOptions.USUAL.svg());
    private final JCheckBox png = new JCheckBox("PNG", PictureOptions.USUAL.png());
    private final JTextField board = new JTextField(12);
    private final JCheckBox boardInOne = new JCheckBox(WORDS.get("pack.in-one-sheet-no"));
    private final JTextField folder = new JTextField(34);
    private final JButton browse = new JButton(WORDS.get("pack.choose"));
    private final JProgressBar progress = new JProgressBar();
    private final JLabel step = new JLabel(" ");
    private final JButton write = new JButton(WORDS.get("pack.write-build-pack"));
    private final JButton cancel = new JButton(WORDS.get("pack.cancel"));

    private PackDialog(Window parent, Desk desk, Analysis analysis, Prompts prompts, PreferenceStore preferences) {
        super(parent, WORDS.get("pack.build-pack"), Dialog.ModalityType.DOCUMENT_MODAL);
        HelpPage.name(getRootPane(), "dialogs/build-pack");
        this.desk = desk;
        this.prompts = prompts;
        this.preferences = preferences;
        this.export = new PackExport(analysis, this::showStep, this::finished);
        setName("pack");
        folder.setText(suggestion(desk, preferences).toString());
        paper.setSelectedItem(PackOptions.ALL.paper());
        BoardSize usual = PackOptions.ALL.board().size();
        board.setText(Math.round(usual.widthMm()) + "x" + Math.round(usual.heightMm()));
        build();
        setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                cancel();
            }
        });
        pack();
        setLocationRelativeTo(parent);
    }

    /** Shows the dialog for the results on the desk. */
    public static void show(Window parent, Desk desk, Prompts prompts, PreferenceStore preferences) {
        desk.analysis()
                .ifPresent(analysis -> new PackDialog(parent, desk, analysis, prompts, preferences).setVisible(true));
    }

    private static Path suggestion(Desk desk, PreferenceStore preferences) {
        String name = desk.document().map(Document::name).orElse("harness") + "-pack";
        Optional<Path> beside = desk.document().flatMap(Document::file).map(Path::getParent);
        return Optional.ofNullable(preferences.now().folders().get(FOLDER))
                .or(() -> beside)
                .orElse(Path.of(System.getProperty("user.home")))
                .resolve(name);
    }

    private void build() {
        setLayout(new MigLayout("insets 16, fillx, wrap 3, gapy 6, hidemode 2", "[][grow,fill][]"));
        add(PaneTitle.of(WORDS.get("pack.documents")), "span, gapbottom 2");
        JPanel sheets = new JPanel(new MigLayout("insets 0, flowy, gapy 6, gapx 24, wrap " + DOCUMENTS_DOWN));
        for (PackDocument document : PackDocument.values()) {
            JCheckBox box = new JCheckBox(TradeWords.named(document), true);
            box.setName("document-" + document.id());
            box.addActionListener(event -> refresh());
            documents.put(document, box);
            sheets.add(box);
        }
        add(sheets, "span");
        remedies.setName("try-remedies-for-pack");
        remedies.setToolTipText(WORDS.get("pack.lists-in-the-calculation"));
        add(remedies, "span, gapleft 20");
        perAssembly.setName("per-assembly");
        perAssembly.setToolTipText(WORDS.get("pack.cover-drawing-tables-build"));
        perAssembly.setVisible(desk.analysis()
                .filter(all -> !all.harness().assemblies().isEmpty())
                .isPresent());
        add(perAssembly, "span");
        JLabel paperLabel = new JLabel(WORDS.get("pack.paper-of-drawing-and"));
        paperLabel.setLabelFor(paper);
        add(paperLabel, "gaptop 8");
        add(paper, "split 2, growx 0, gaptop 8");
        add(monochrome, "gapleft 12, gaptop 8, wrap");
        JLabel boardLabel = new JLabel(WORDS.get("pack.largest-form-board-mm"));
        boardLabel.setLabelFor(board);
        board.setName("board-size");
        board.setToolTipText(WORDS.get("pack.width-by-height-as"));
        TextUndo.install(board);
        add(boardLabel);
        add(board, "split 2, growx 0");
        boardInOne.setName("board-in-one");
        boardInOne.setToolTipText(WORDS.get("pack.each-form-board-on"));
        add(boardInOne, "gapleft 12, wrap");
        JLabel pictureLabel = new JLabel(WORDS.get("pack.drawing-also-as"));
        pictureLabel.setLabelFor(svg);
        svg.setName("drawing-as-svg");
        png.setName("drawing-as-png");
        add(pictureLabel);
        add(svg, "split 2");
        add(png, "gapleft 12, wrap");
        JLabel folderLabel = new JLabel(WORDS.get("pack.folder"));
        folderLabel.setLabelFor(folder);
        folder.setName("pack-folder");
        TextUndo.install(folder);
        add(folderLabel);
        add(folder);
        browse.addActionListener(event -> chooseFolder());
        add(browse);
        progress.setVisible(false);
        progress.getAccessibleContext().setAccessibleName(WORDS.get("pack.progress-of-the-build"));
        add(progress, "span, growx, gaptop 8");
        step.putClientProperty(FlatClientProperties.STYLE, "foreground: $Ohmloom.soft");
        add(step, "span, growx, wmin 0");
        write.setName("write-pack");
        write.addActionListener(event -> start());
        cancel.addActionListener(event -> cancel());
        add(write, "span, split 2, tag ok, gaptop 4");
        add(cancel, "tag cancel");
        getRootPane().setDefaultButton(write);
        getRootPane()
                .registerKeyboardAction(
                        event -> cancel(), Keys.plain(KeyEvent.VK_ESCAPE), JComponent.WHEN_IN_FOCUSED_WINDOW);
    }

    private void chooseFolder() {
        prompts.folderForPack(Optional.ofNullable(Path.of(folder.getText()).getParent()))
                .ifPresent(chosen -> folder.setText(chosen.toString()));
    }

    private void start() {
        Path target;
        try {
            target = Path.of(folder.getText().strip()).toAbsolutePath();
        } catch (InvalidPathException wrong) {
            fail(WORDS.get("pack.is-not-the-name", folder.getText()));
            return;
        }
        Optional<BoardSize> size = BoardSize.parsed(board.getText());
        if (size.isEmpty()) {
            fail(WORDS.get("pack.is-no-size-of", board.getText().strip()));
            return;
        }
        preferences.change(before -> before.withFolder(FOLDER, parent(target)));
        setBusy(true);
        export.start(
                target,
                new PackOptions(
                        chosen(),
                        (Paper) paper.getSelectedItem(),
                        monochrome.isSelected(),
                        remedies.isSelected(),
                        perAssembly.isSelected(),
                        new BoardOptions(size.get(), boardInOne.isSelected()),
                        new PictureOptions(svg.isSelected(), png.isSelected(), PictureOptions.USUAL.dotsPerInch())));
    }

    private static Path parent(Path target) {
        return Optional.ofNullable(target.getParent()).orElse(target);
    }

    private Set<PackDocument> chosen() {
        Set<PackDocument> chosen = EnumSet.noneOf(PackDocument.class);
        documents.forEach((document, box) -> {
            if (box.isSelected()) {
                chosen.add(document);
            }
        });
        return chosen;
    }

    private void refresh() {
        write.setEnabled(!chosen().isEmpty() && !export.isRunning());
        remedies.setEnabled(chosen().contains(PackDocument.CALCULATION) && !export.isRunning());
    }

    private void setBusy(boolean busy) {
        documents.values().forEach(box -> box.setEnabled(!busy));
        List.of(paper, board, boardInOne, svg, png, monochrome, remedies, perAssembly, folder, browse, write)
                .forEach(part -> part.setEnabled(!busy));
        progress.setVisible(busy);
        step.setText(" ");
        pack();
    }

    private void showStep(PackExport.Step at) {
        progress.setMaximum(Math.max(1, at.total()));
        progress.setValue(at.done());
        say(Words.said(at.what()), "Ohmloom.soft");
    }

    private void finished(PackExport.Result result) {
        if (result.problem().isPresent()) {
            fail(result.problem().get());
            return;
        }
        dispose();
        if (!result.files().isEmpty()) {
            desk.say(WORDS.get(
                    "pack.build-pack-written-in",
                    TradeWords.count(result.files().size(), "file"),
                    result.files().get(0).getParent()));
        }
    }

    private void fail(String sentence) {
        setBusy(false);
        say(sentence, "Ohmloom.error");
    }

    private void say(String sentence, String colour) {
        step.setText(sentence);
        step.setToolTipText(sentence);
        step.putClientProperty(FlatClientProperties.STYLE, "foreground: $" + colour);
    }

    private void cancel() {
        if (export.isRunning()) {
            export.cancel();
            say(WORDS.get("pack.stopping"), "Ohmloom.soft");
        } else {
            dispose();
        }
    }
}
