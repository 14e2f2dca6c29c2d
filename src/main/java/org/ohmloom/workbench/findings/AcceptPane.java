package org.ohmloom.workbench.findings;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.edit.AcceptFindings;
import org.ohmloom.edit.Edit;
import org.ohmloom.review.Finding;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.PaneDialog;
import org.ohmloom.workbench.widget.TextChanges;
import org.ohmloom.workbench.widget.TextUndo;
import org.ohmloom.workbench.widget.WrappedText;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** Accepts a finding, or all of its kind, as it is: the reason must be said. */
final class AcceptPane extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Words words = Words.of("findings");
    private final transient List<Finding> alike;
    private final transient Clock clock;
    private final JTextArea reason = new JTextArea(3, 40);
    private final JTextField by = new JTextField(16);
    private final JCheckBox all = new JCheckBox();
    private final JButton accept = new JButton(words.get("accept"));

    /**
     * A pane.
     *
     * @param alike  findings of one rule, the selected one first
     * @param clock  tells the date
     * @param answer takes the edit when a person agrees
     * @param close  closes the window round it
     */
    AcceptPane(List<Finding> alike, Clock clock, Consumer<Edit> answer, Runnable close) {
        super(new MigLayout("insets 12, fill, wrap 2, gapy 6, hidemode 3", "[][grow,fill]"));
        HelpPage.name(this, "dialogs/accept");
        this.alike = List.copyOf(alike);
        this.clock = clock;
        add(WrappedText.of(Words.said(alike.get(0).sentence()), "Label.foreground", 0), "span 2, growx, wmin 0");
        JLabel why = new JLabel(words.get("reason"));
        why.setLabelFor(reason);
        reason.setName("accept-reason");
        reason.setLineWrap(true);
        reason.setWrapStyleWord(true);
        reason.getAccessibleContext().setAccessibleName(words.get("reason"));
        reason.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        reason.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        reason.getInputMap().put(Keys.plain(KeyEvent.VK_TAB), "none");
        TextUndo.install(reason);
        TextChanges.listen(reason, this::refresh);
        add(why, "aligny top");
        add(new JScrollPane(reason), "grow, push, hmin 60");
        JLabel who = new JLabel(words.get("by"));
        who.setLabelFor(by);
        by.setName("accept-by");
        by.getAccessibleContext().setAccessibleName(words.get("by"));
        TextUndo.install(by);
        add(who);
        add(by);
        all.setText(words.get(
                "all-of-kind", alike.size(), TradeWords.rule(alike.get(0).rule())));
        all.setName("accept-all");
        all.setVisible(alike.size() > 1);
        add(all, "skip 1");
        JLabel note = new JLabel(words.get("accept-note"));
        note.putClientProperty(FlatClientProperties.STYLE, "foreground: $Ohmloom.soft");
        add(note, "skip 1, wmin 0");
        accept.setName("accept-apply");
        accept.addActionListener(event -> {
            answer.accept(edit());
            close.run();
        });
        JButton cancel = new JButton(words.get("cancel"));
        cancel.addActionListener(event -> close.run());
        add(accept, "span 2, split 2, tag ok, growx 0");
        add(cancel, "tag cancel, growx 0");
        refresh();
    }

    private void refresh() {
        accept.setEnabled(!reason.getText().isBlank());
    }

    private Edit edit() {
        List<Finding> accepted = all.isSelected() ? alike : alike.subList(0, 1);
        return new AcceptFindings(
                accepted.stream()
                        .map(each -> new AcceptFindings.Accepted(each.rule(), each.subjects()))
                        .toList(),
                reason.getText(),
                by.getText(),
                LocalDate.now(clock).toString());
    }

    JTextArea reasonField() {
        return reason;
    }

    JCheckBox allBox() {
        return all;
    }

    JButton acceptButton() {
        return accept;
    }

    /** Shows a dialog. */
    static void show(Component parent, Desk desk, Clock clock) {
        PaneDialog dialog =
                new PaneDialog(parent, "accept-dialog", Words.of("findings").get("accept-title"));
        AcceptPane pane = new AcceptPane(Fixes.alike(desk), clock, desk::apply, dialog::dispose);
        dialog.fill(pane, pane.accept);
        dialog.setVisible(true);
    }
}
