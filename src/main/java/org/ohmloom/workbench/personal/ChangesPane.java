package org.ohmloom.workbench.personal;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.function.UnaryOperator;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.edit.Session;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** The changes of a document by name, those taken back greyed; choosing one goes there in one step. */
final class ChangesPane extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int VISIBLE_ROWS = 14;

    private final DefaultListModel<String> model = new DefaultListModel<>();
    private final JList<String> list = new JList<>(model);
    private final transient Session session;
    private final JButton go;

    ChangesPane(Session session, Runnable closing) {
        this(session, UnaryOperator.identity(), closing);
    }

    /**
     * A pane.
     *
     * @param shown writes a change as a person reads it
     */
    ChangesPane(Session session, UnaryOperator<String> shown, Runnable closing) {
        super(new MigLayout("insets 12 14 12 14, fill, wrap 1", "[grow,fill]"));
        HelpPage.name(this, "dialogs/changes");
        this.session = session;
        Words words = Words.of("personal");
        go = new JButton(words.get("changes.go"));
        list.setName("changes");
        list.getAccessibleContext().setAccessibleName(words.get("change-list"));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setVisibleRowCount(VISIBLE_ROWS);
        list.setCellRenderer(new Row());
        model.addElement(
                session.stepsDropped() == 0
                        ? words.get("changes.start")
                        : words.get("changes.oldest", session.stepsDropped()));
        session.steps().forEach(step -> model.addElement(shown.apply(Words.said(step))));
        list.setSelectedIndex(session.stepsDone());
        list.ensureIndexIsVisible(session.stepsDone());
        Runnable choose = () -> {
            if (list.getSelectedIndex() >= 0) {
                session.goTo(list.getSelectedIndex());
                closing.run();
            }
        };
        go.addActionListener(event -> choose.run());
        Keys.bind(list, WHEN_FOCUSED, Keys.plain(KeyEvent.VK_ENTER), "go", choose);
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2) {
                    choose.run();
                }
            }
        });
        add(new JScrollPane(list), "grow, push, wmin 420lp");
        add(go, "growx 0, alignx right");
    }

    JButton goButton() {
        return go;
    }

    JList<String> steps() {
        return list;
    }

    private final class Row extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<?> of, Object value, int index, boolean isSelected, boolean cellHasFocus) {
            super.getListCellRendererComponent(of, value, index, isSelected, cellHasFocus);
            if (index > session.stepsDone() && !isSelected) {
                setForeground(UIManager.getColor("Label.disabledForeground"));
            }
            return this;
        }
    }
}
