package org.ohmloom.workbench.findings;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.remedy.Remedy;
import org.ohmloom.remedy.RemedyList;
import org.ohmloom.remedy.RemedySearch;
import org.ohmloom.review.Finding;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.LatestWins;
import org.ohmloom.workbench.widget.ColumnHeads;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.WrappedText;
import org.ohmloom.workbench.words.Words;

/**
 * The remedies of one finding: tried off the event thread, listed best first, with what the chosen one changes; one of them can be
 * applied as a step that can be undone.
 */
final class RemediesPane extends JPanel {
    private static final Words WORDS = Words.of("findings");

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final transient Finding finding;
    private final transient Optional<Analysis> analysis;
    private final transient Runnable close;
    private final transient LatestWins<Finding, RemedyList> search;
    private final RemediesModel model;
    private final JTable table;
    private final JTextArea details = new JTextArea(7, 40);
    private final JProgressBar progress = new JProgressBar();
    private final JLabel state = new JLabel(WORDS.get("remedies.trying-remedies"));
    private final JButton apply = new JButton(WORDS.get("remedies.apply"));

    /**
     * A pane that has not begun.
     *
     * @param desk     the desk whose results hold the finding
     * @param finding  the finding
     * @param delivery runs a task on the event thread
     * @param close    closes the window round it
     */
    RemediesPane(Desk desk, Finding finding, Executor delivery, Runnable close) {
        super(new MigLayout("insets 16, fill, wrap 1, gapy 6, hidemode 3", "[grow,fill]", "[][grow,fill][]"));
        HelpPage.name(this, "dialogs/remedies");
        this.desk = desk;
        this.model = new RemediesModel(desk.units());
        this.table = new JTable(model);
        this.finding = finding;
        this.analysis = desk.analysis();
        this.close = close;
        this.search = new LatestWins<>(
                "remedies",
                (asked, cancel, soFar) -> new RemedySearch(analysis.orElseThrow(), cancel).of(asked),
                Duration.ZERO,
                delivery,
                this::receive);
        build();
    }

    /** Begins to try. */
    void start() {
        search.ask(finding);
    }

    /** Stops trying. */
    void stop() {
        search.stop();
    }

    JTable table() {
        return table;
    }

    JButton applyButton() {
        return apply;
    }

    String detailsText() {
        return details.getText();
    }

    String stateText() {
        return state.getText();
    }

    private void build() {
        add(WrappedText.of(finding.message(desk.units(), Words.language()), "Label.foreground", 0), "wmin 0");
        table.setName("remedies");
        table.getAccessibleContext().setAccessibleName(WORDS.get("remedies.remedies"));
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.setFillsViewportHeight(true);
        table.setPreferredScrollableViewportSize(new Dimension(UIScale.scale(1020), UIScale.scale(220)));
        for (int column = 0; column < model.getColumnCount(); column++) {
            table.getColumnModel().getColumn(column).setPreferredWidth(UIScale.scale(RemediesModel.WIDTHS.get(column)));
        }
        ColumnHeads.keep(table);
        table.getSelectionModel().addListSelectionListener(event -> showChosen());
        add(new JScrollPane(table), "grow, push, hmin 120");
        details.setEditable(false);
        details.setLineWrap(true);
        details.setWrapStyleWord(true);
        details.setName("remedy-details");
        details.getAccessibleContext().setAccessibleName(WORDS.get("remedies.what-the-remedy-changes"));
        details.setBorder(BorderFactory.createEmptyBorder(6, 8, 6, 8));
        add(new JScrollPane(details), "growx, hmin 110");
        progress.setIndeterminate(true);
        progress.getAccessibleContext().setAccessibleName(WORDS.get("remedies.remedies-are-being-tried"));
        add(progress, "growx");
        state.putClientProperty(FlatClientProperties.STYLE, "foreground: $Ohmloom.soft");
        add(state, "growx");
        apply.setName("apply-remedy");
        apply.setEnabled(false);
        apply.addActionListener(event -> applyChosen());
        JButton closing = new JButton(WORDS.get("remedies.close"));
        closing.setName("close-remedies");
        closing.addActionListener(event -> close.run());
        add(apply, "split 2, tag ok, growx 0");
        add(closing, "tag cancel, growx 0");
    }

    private void receive(LatestWins.Outcome<Finding, RemedyList> outcome) {
        progress.setVisible(false);
        if (outcome.answer().isEmpty()) {
            state.setText(WORDS.get(
                    "remedies.remedies-could-not-be",
                    outcome.failure().map(Words::said).orElseGet(() -> WORDS.get("remedies.stopped"))));
            return;
        }
        RemedyList list = outcome.answer().get();
        model.show(list.remedies());
        state.setText(RemediesModel.summary(list));
        if (!list.remedies().isEmpty()) {
            table.setRowSelectionInterval(0, 0);
            table.requestFocusInWindow();
        }
    }

    private Optional<Remedy> chosen() {
        List<Remedy> remedies = model.remedies();
        int row = table.getSelectedRow();
        return row < 0 || row >= remedies.size() ? Optional.empty() : Optional.of(remedies.get(row));
    }

    private void showChosen() {
        details.setText(chosen().map(model::details).orElse(""));
        details.setCaretPosition(0);
        apply.setEnabled(chosen().isPresent());
    }

    private void applyChosen() {
        boolean unchanged = analysis.map(Analysis::harness).equals(desk.harness());
        if (unchanged) {
            chosen().ifPresent(remedy -> desk.apply(remedy.edit()));
        }
        close.run();
    }
}
