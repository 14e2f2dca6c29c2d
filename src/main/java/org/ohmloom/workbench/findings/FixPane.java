package org.ohmloom.workbench.findings;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.event.KeyEvent;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.table.DefaultTableModel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.revision.ElementChange;
import org.ohmloom.analysis.revision.ElementChanges;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Harness;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Rules;
import org.ohmloom.workbench.desk.Calculation;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.LatestWins;
import org.ohmloom.workbench.desk.Results;
import org.ohmloom.workbench.widget.ColumnHeads;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.PaneDialog;
import org.ohmloom.workbench.widget.ReadRows;
import org.ohmloom.workbench.widget.WrappedText;
import org.ohmloom.workbench.words.Words;

/** What a fix changes, field by field, and which findings go and come with it, worked out on a copy; then applied or not. */
final class FixPane extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Words words = Words.of("findings");
    private final transient Desk desk;
    private final transient Edit fix;
    private final transient Harness before;
    private final transient Runnable close;
    private final transient LatestWins<Calculation.Question, Analysis> trial;
    private final JTextArea effect = new JTextArea(5, 50);
    private final JButton apply = new JButton(words.get("apply"));
    private final JTable table;

    /**
     * A pane.
     *
     * @param calculation works out the copy
     * @param close       closes the window round it
     */
    FixPane(Desk desk, Edit fix, Calculation calculation, Executor delivery, Runnable close) {
        super(new MigLayout("insets 12, fill, wrap 1, gapy 6", "[grow,fill]"));
        HelpPage.name(this, "dialogs/fix");
        this.desk = desk;
        this.fix = fix;
        this.before = desk.harness().orElseThrow();
        this.close = close;
        this.trial = new LatestWins<>("fix", calculation::of, Duration.ZERO, delivery, this::receive);
        add(WrappedText.of(desk.units().text(Words.said(fix.label())), "Label.foreground", 0), "wmin 0");
        DefaultTableModel rows =
                new ReadRows(List.of(words.get("thing"), words.get("what"), words.get("now"), words.get("then")));
        ElementChanges.between(before, fix.apply(before)).forEach(each -> addRows(rows, each));
        table = new JTable(rows);
        ColumnHeads.begin(table);
        table.setName("fix-changes");
        table.getAccessibleContext().setAccessibleName(words.get("changes"));
        table.setFillsViewportHeight(true);
        Keys.leave(table, KeyEvent.VK_ENTER);
        JScrollPane scroll = new JScrollPane(table);
        scroll.setPreferredSize(new Dimension(UIScale.scale(620), UIScale.scale(180)));
        add(scroll, "grow, push");
        effect.setName("fix-effect");
        effect.setEditable(false);
        effect.setLineWrap(true);
        effect.setWrapStyleWord(true);
        effect.getAccessibleContext().setAccessibleName(words.get("effect"));
        effect.putClientProperty(FlatClientProperties.STYLE, "background: $Panel.background");
        effect.setText(words.get("trying"));
        add(new JScrollPane(effect), "growx, hmin 90");
        apply.setName("fix-apply");
        apply.addActionListener(event -> {
            if (desk.harness().filter(now -> now == before).isPresent()) {
                desk.apply(fix);
            }
            close.run();
        });
        JButton cancel = new JButton(words.get("cancel"));
        cancel.setName("fix-cancel");
        cancel.addActionListener(event -> close.run());
        add(apply, "split 2, tag ok, growx 0");
        add(cancel, "tag cancel, growx 0");
    }

    /** A row for each field of a thing that stays, one for a thing that comes, goes or is called otherwise. */
    private void addRows(DefaultTableModel rows, ElementChange element) {
        String kind = Words.said(element.kindText());
        String thing = element.id().isEmpty() ? kind : element.id();
        switch (element.change()) {
            case ADDED -> rows.addRow(new Object[] {thing, "", "", kind});
            case REMOVED -> rows.addRow(new Object[] {thing, "", kind, ""});
            case RENUMBERED -> rows.addRow(new Object[] {thing, "", element.was(), element.id()});
            case CHANGED -> element.fields()
                    .forEach(field -> rows.addRow(new Object[] {
                        thing,
                        Words.said(field.fieldText()),
                        shown(Words.said(field.beforeText())),
                        shown(Words.said(field.afterText()))
                    }));
        }
    }

    private String shown(String value) {
        return value.isEmpty() ? "–" : desk.units().text(value);
    }

    /** Begins to work out the copy. */
    void start() {
        trial.ask(new Calculation.Question(fix.apply(before), desk.document().flatMap(each -> each.tablesBeside())));
    }

    void stop() {
        trial.stop();
    }

    String effectText() {
        return effect.getText();
    }

    JTable changes() {
        return table;
    }

    JButton applyButton() {
        return apply;
    }

    private void receive(LatestWins.Outcome<Calculation.Question, Analysis> outcome) {
        if (outcome.answer().isEmpty()) {
            effect.setText(words.get("not-tried"));
            return;
        }
        Analysis tried = outcome.answer().get();
        List<Finding> old = desk.findings().stream()
                .map(Results.Standing::finding)
                .filter(each -> isReady(tried, each))
                .toList();
        List<Finding> gone = without(old, tried.findings());
        List<Finding> come = without(tried.findings(), old);
        String head = tried.isWhole() ? "" : words.get("more-coming") + "\n";
        effect.setText(head + words.get("gone", gone.size()) + lines(gone) + "\n" + words.get("come", come.size())
                + lines(come));
        effect.setCaretPosition(0);
    }

    /** Whether the rule of a finding has been looked at in the trial already. */
    private static boolean isReady(Analysis tried, Finding finding) {
        return Rules.ALL.stream()
                .filter(rule -> rule.info().id().equals(finding.rule()))
                .anyMatch(rule -> tried.evidence().isReadyFor(rule));
    }

    private static List<Finding> without(List<Finding> all, List<Finding> others) {
        return all.stream()
                .filter(each -> others.stream().noneMatch(other -> Fixes.isSame(each, other)))
                .toList();
    }

    private String lines(List<Finding> findings) {
        return findings.stream()
                .map(each -> "\n   " + each.message(desk.units(), Words.language()))
                .collect(Collectors.joining());
    }

    /** Shows a dialog that can be worked in until the fix is applied or not. */
    static void show(Component parent, Desk desk, Edit fix, Calculation calculation) {
        PaneDialog dialog =
                new PaneDialog(parent, "fix-dialog", Words.of("findings").get("fix-title"));
        FixPane pane = new FixPane(desk, fix, calculation, EventQueue::invokeLater, dialog::dispose);
        dialog.onClosed(pane::stop);
        dialog.fill(pane, pane.apply);
        pane.start();
        dialog.setVisible(true);
    }

    /** The fix of the selected finding while its numbers are those of the harness. */
    static Optional<Edit> fixOf(Desk desk) {
        return desk.isCurrent() ? desk.selection().finding().flatMap(Finding::fix) : Optional.empty();
    }
}
