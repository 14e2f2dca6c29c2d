package org.ohmloom.workbench.window;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.EnumMap;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.review.Severity;
import org.ohmloom.units.Dimension;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.CalculationStatus;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Filing;
import org.ohmloom.workbench.desk.Topic;
import org.ohmloom.workbench.widget.EdgeLine;
import org.ohmloom.workbench.widget.SeverityIcon;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** Says how the numbers stand, how many findings there are and what happened last. */
final class StatusBar extends JPanel {
    private static final Words WORDS = Words.of("window");

    private static final long serialVersionUID = 1L;
    private static final int WORTH_SAYING_MILLIS = 300;

    private final transient Desk desk;
    private final JLabel state = new JLabel();
    private final JProgressBar progress = new JProgressBar();
    private final JButton stop;
    private final transient Filing filing;
    private final JProgressBar fileProgress = new JProgressBar();
    private final JLabel fileWork = new JLabel();
    private final Timer filePatience;
    private final JLabel message = new JLabel();
    private final JLabel totals = new JLabel();
    private final transient Map<Severity, JButton> counts = new EnumMap<>(Severity.class);
    private final Timer patience;

    /**
     * A status bar.
     *
     * @param filing     says what is being read or written
     * @param toFindings moves the keyboard to the findings
     */
    StatusBar(Desk desk, Filing filing, Command stopCalculating, Runnable toFindings) {
        super(new MigLayout(
                "insets 2 10 2 10, fillx, gapx 6, hidemode 2", "[]6[]2[]14[]2[]2[]14[grow,fill]10[]2[]10[]"));
        this.desk = desk;
        this.filing = filing;
        this.filePatience = new Timer(WORTH_SAYING_MILLIS, event -> showFileWork());
        filePatience.setRepeats(false);
        this.stop = new JButton(stopCalculating);
        this.patience = new Timer(WORTH_SAYING_MILLIS, event -> showStatus());
        patience.setRepeats(false);
        setBorder(EdgeLine.above());
        state.setName("status");
        progress.setIndeterminate(true);
        progress.getAccessibleContext().setAccessibleName(WORDS.get("status-bar.calculation-under-way"));
        stop.setText(WORDS.get("status-bar.stop"));
        stop.setIcon(null);
        stop.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_BORDERLESS);
        add(state);
        add(progress, "w 70!");
        add(stop, "h 20!");
        for (Severity severity : Severity.values()) {
            JButton count = new JButton("0", new SeverityIcon(severity));
            count.setName("count-" + severity);
            count.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
            count.addActionListener(event -> toFindings.run());
            counts.put(severity, count);
            add(count);
        }
        message.setName("message");
        message.putClientProperty(FlatClientProperties.STYLE, "foreground: $Ohmloom.soft");
        totals.putClientProperty(FlatClientProperties.STYLE, "foreground: $Ohmloom.soft");
        fileProgress.setIndeterminate(true);
        fileProgress.setName("file-progress");
        fileProgress
                .getAccessibleContext()
                .setAccessibleName(Words.of("windows").get("progress"));
        fileWork.setName("file-work");
        add(message, "wmin 0");
        add(fileWork);
        add(fileProgress, "w 70!");
        add(totals);
        desk.listen(this::hear);
        filing.listen(() -> {
            if (filing.progress().isPresent()) {
                filePatience.restart();
            } else {
                filePatience.stop();
                showFileWork();
            }
        });
        showFileWork();
        showStatus();
        showResults();
    }

    private void hear(Topic topic) {
        switch (topic) {
            case MESSAGE -> message.setText(desk.message());
            case RESULTS, DOCUMENT -> {
                if (desk.status().kind() == CalculationStatus.Kind.CALCULATING) {
                    patience.restart();
                    showResults();
                } else {
                    patience.stop();
                    showStatus();
                    showResults();
                }
            }
            case VIEW -> showResults();
            case HARNESS, SELECTION -> {}
        }
    }

    private void showFileWork() {
        fileWork.setText(filing.progress().orElse(""));
        fileWork.setVisible(filing.progress().isPresent());
        fileProgress.setVisible(filing.progress().isPresent());
    }

    private void showStatus() {
        CalculationStatus status = desk.status();
        boolean busy = status.isBusy();
        state.setText(status.sentence());
        state.setToolTipText(status.sentence());
        state.putClientProperty(
                FlatClientProperties.STYLE,
                "foreground: $"
                        + switch (status.kind()) {
                            case UP_TO_DATE -> "Ohmloom.good";
                            case OUTDATED -> "Ohmloom.warning";
                            case NOT_POSSIBLE -> "Ohmloom.error";
                            case NONE, CALCULATING, STUDYING -> "Ohmloom.soft";
                        });
        progress.setVisible(busy);
        stop.setVisible(busy);
    }

    private void showResults() {
        counts.forEach((severity, button) -> {
            long count = desk.results().count(severity);
            String words = TradeWords.count(count, TradeWords.lower(severity));
            button.setText(String.valueOf(count));
            button.setToolTipText(WORDS.get("status-bar.go-to-findings", words));
            button.getAccessibleContext().setAccessibleName(words);
            button.setVisible(desk.analysis().isPresent());
        });
        totals.setText(desk.analysis().map(this::totals).orElse(""));
    }

    private String totals(Analysis results) {
        return WORDS.get(
                "status-bar.to-make-copper",
                TradeWords.count(results.totals().wires(), "wire"),
                desk.units().metres(results.totals().lengthMetres()),
                desk.units().quantity(results.totals().copperKg(), Dimension.MASS));
    }
}
