package org.ohmloom.workbench.lists;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.table.DefaultTableModel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.Field;
import org.ohmloom.edit.NamePattern;
import org.ohmloom.edit.RenamePlan;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.workbench.widget.ColumnHeads;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.PaneDialog;
import org.ohmloom.workbench.widget.ReadRows;
import org.ohmloom.workbench.widget.TextChanges;
import org.ohmloom.workbench.widget.TextUndo;
import org.ohmloom.workbench.widget.WrappedText;
import org.ohmloom.workbench.words.Words;

/** Gives things new identities by a pattern: the pattern above, below it every thing with its new identity as it is typed. */
final class RenamePane extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Words words = Words.of("lists");
    private final transient Harness harness;
    private final transient List<ElementId> things;
    private final JTextField pattern = new JTextField(24);
    private final JLabel state = new JLabel(" ");
    private final JButton rename = new JButton(words.get("rename"));
    private final DefaultTableModel lines;
    private transient Optional<RenamePlan> plan = Optional.empty();

    /**
     * A pane.
     *
     * @param things what is renamed, in the order it is counted in
     * @param answer takes the edit a person agrees to, or nothing
     */
    RenamePane(Harness harness, List<ElementId> things, Consumer<Optional<Edit>> answer) {
        super(new MigLayout("insets 12, fill, wrap 2", "[][grow,fill]"));
        HelpPage.name(this, "dialogs/rename");
        this.harness = harness;
        this.things = List.copyOf(things);
        JLabel label = new JLabel(words.get("pattern"));
        label.setLabelFor(pattern);
        pattern.setName("rename-pattern");
        pattern.getAccessibleContext().setAccessibleName(words.get("pattern"));
        TextUndo.install(pattern);
        add(label);
        add(pattern);
        String help = words.get(
                "pattern-help",
                "{001}",
                "{10+5}",
                "{number+100}",
                "{letters}",
                "{old}",
                words.get("rename.circuit-class-size-from"));
        add(WrappedText.of(help, "Ohmloom.soft", 0), "skip 1, growx, wmin 0, w 480");
        lines = new ReadRows(List.of(words.get("now"), words.get("then"), words.get("because")));
        JTable table = new JTable(lines);
        table.setName("rename-lines");
        table.getAccessibleContext().setAccessibleName(words.get("rename-lines"));
        table.setFillsViewportHeight(true);
        ColumnHeads.keep(table);
        JScrollPane scroll = new JScrollPane(table);
        scroll.setPreferredSize(new Dimension(UIScale.scale(560), UIScale.scale(280)));
        add(scroll, "span 2, grow, push");
        state.setName("rename-state");
        add(state, "span 2, growx, wmin 0");
        rename.setName("rename-apply");
        rename.addActionListener(
                event -> plan.filter(RenamePlan::isReady).ifPresent(ready -> answer.accept(Optional.of(ready.edit()))));
        JButton cancel = new JButton(words.get("cancel"));
        cancel.addActionListener(event -> answer.accept(Optional.empty()));
        add(rename, "span 2, split 2, tag ok, growx 0");
        add(cancel, "tag cancel, growx 0");
        pattern.setText(words.get("rename.old"));
        TextChanges.listen(pattern, this::refresh);
        pattern.selectAll();
        refresh();
    }

    /** The field of the pattern. */
    JTextField patternField() {
        return pattern;
    }

    /** The button that agrees. */
    JButton renameButton() {
        return rename;
    }

    String stateText() {
        return state.getText();
    }

    private void refresh() {
        lines.setRowCount(0);
        try {
            RenamePlan made = RenamePlan.of(harness, things, NamePattern.parse(pattern.getText()), RenamePane::says);
            plan = Optional.of(made);
            made.lines()
                    .forEach(line -> lines.addRow(new Object[] {line.old(), line.now(), Words.said(line.problem())}));
            state.setText(made.problem().map(Words::said).orElse(words.get("rename-count", things.size())));
        } catch (IllegalArgumentException unfit) {
            plan = Optional.empty();
            things.forEach(thing -> lines.addRow(new Object[] {thing, "", ""}));
            state.setText(Words.said(unfit));
        }
        rename.setEnabled(plan.filter(RenamePlan::isReady).isPresent());
    }

    /** What an element says of itself: a field of its own by the word of the pattern. */
    private static Optional<String> says(Element element, String word) {
        String path =
                switch (word) {
                    case "class" -> "signalClass";
                    case "size" -> "gauge";
                    default -> word;
                };
        Field field = Field.of(path);
        return field.suits(element) ? Optional.of(field.text(element)) : Optional.empty();
    }

    /** Shows a dialog and waits for the answer. */
    static Optional<Edit> ask(Component owner, Harness harness, List<ElementId> things) {
        return new PaneDialog(owner, "rename-dialog", Words.of("lists").get("rename-title", things.size()))
                .ask(answer -> new RenamePane(harness, things, answer), RenamePane::renameButton);
    }
}
