package org.ohmloom.workbench.channel;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.edit.ChangeWiringRules;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WiringRules;
import org.ohmloom.signal.wiring.WiringMade;
import org.ohmloom.units.Gauge;
import org.ohmloom.workbench.desk.LatestWins;
import org.ohmloom.workbench.desk.Services;
import org.ohmloom.workbench.widget.PaneTitle;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.widget.TextChanges;
import org.ohmloom.workbench.widget.TextUndo;
import org.ohmloom.workbench.widget.WrappedText;
import org.ohmloom.workbench.words.Words;

/** Colours by what wires carry, their size, the wires that come of it, and what cannot be made. */
final class WiringPane extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final Duration PAUSE = Duration.ofMillis(200);

    private final transient Words words = Words.of("channels");
    private final transient Harness harness;
    private final ColourModel colours;
    private final JTextField gauge = new JTextField(8);
    private final WirePreview preview;
    private final JLabel summary = new JLabel(" ");
    private final JTextArea problems = new JTextArea(4, 20);
    private final JButton ok = new JButton(words.get("wiring.make"));
    private final OutputStates states;
    private transient Optional<WiringMade> shown = Optional.empty();
    private final transient LatestWins<Harness, WiringMade> worker;
    private transient Optional<Edit> edit = Optional.empty();

    /** A pane; the answer is empty when a person gives up. */
    WiringPane(Harness harness, Services services, Consumer<Optional<Edit>> answer) {
        super(new MigLayout("insets 14 16 12 16, fill, wrap 2, gap 12 6", "[300:330:,fill]12[grow,fill]"));
        this.harness = harness;
        this.colours = new ColourModel(words, harness.rules().wiringRules());
        this.preview = new WirePreview(words, new Samples(services.painter()));
        this.worker = new LatestWins<>(
                "wiring",
                (asked, cancel, soFar) -> WiringMade.of(asked),
                PAUSE,
                services.eventThread(),
                outcome -> outcome.answer().ifPresent(this::show));
        setName("wiring");
        harness.rules().wiringRules().signalGauge().ifPresent(size -> gauge.setText(size.text()));
        add(PaneTitle.of(words.get("wiring.colours")));
        summary.setName("wiring-summary");
        add(summary, "wmin 0");
        ColourTable table = new ColourTable(colours, words);
        JScrollPane scroll = new JScrollPane(table);
        scroll.setPreferredSize(new Dimension(UIScale.scale(360), UIScale.scale(270)));
        add(scroll, "grow, pushy");
        preview.setPreferredSize(new Dimension(UIScale.scale(560), UIScale.scale(270)));
        add(preview, "grow, push");
        add(beside());
        problems.setName("wiring-problems");
        problems.setEditable(false);
        problems.setLineWrap(true);
        problems.setWrapStyleWord(true);
        problems.getAccessibleContext().setAccessibleName(words.get("wiring.problems"));
        add(new JScrollPane(problems), "grow, hmin 60");
        states = new OutputStates(words, harness, this::settle);
        add(states, "span 2, growx, hidemode 3");
        ok.setName("wiring-make");
        ok.setEnabled(false);
        ok.addActionListener(event -> answer.accept(edit));
        JButton cancel = new JButton(words.get("cancel"));
        cancel.setName("wiring-cancel");
        cancel.addActionListener(event -> answer.accept(Optional.empty()));
        JPanel buttons = new JPanel(new MigLayout("insets 4 0 0 0, fillx", "push[][]"));
        buttons.add(ok, "split 2, tag ok");
        buttons.add(cancel, "tag cancel");
        add(buttons, "span 2, growx");
        colours.addTableModelListener(event -> refresh());
        TextChanges.listen(gauge, this::refresh);
        TextUndo.install(gauge);
        refresh();
    }

    private JPanel beside() {
        JPanel panel = new JPanel(new MigLayout("insets 0, wrap 2, gapy 4, fillx", "[][grow,fill]"));
        JLabel label = new JLabel(words.get("wiring.gauge"));
        label.setLabelFor(gauge);
        gauge.setName("wiring-gauge");
        gauge.setToolTipText(words.get("wiring.gauge.about"));
        gauge.getAccessibleContext().setAccessibleName(words.get("wiring.gauge"));
        panel.add(label);
        panel.add(gauge);
        panel.add(WrappedText.of(words.get("wiring.about"), "Ohmloom.soft", 0), "span 2, wmin 0, w 310!");
        return panel;
    }

    private void refresh() {
        shown = Optional.empty();
        edit = Optional.empty();
        ok.setEnabled(false);
        try {
            WiringRules asked = rules();
            worker.ask(harness.withRules(harness.rules().withWiring(asked)));
            say(words.get("wiring.working"), "");
        } catch (IllegalArgumentException unfit) {
            worker.stop();
            say(words.get("wiring.unfit"), Words.said(unfit));
        }
    }

    private WiringRules rules() {
        WiringRules before = harness.rules().wiringRules();
        Optional<Gauge> size = gauge.getText().isBlank()
                ? Optional.empty()
                : Optional.of(Gauge.parse(gauge.getText().strip()));
        return new WiringRules(colours.colours(), size, before.sparePins());
    }

    private void show(WiringMade made) {
        preview.show(made);
        if (made.edit().isEmpty() && made.problems().isEmpty()) {
            say(words.get("wiring.nothing"), "");
        } else {
            say(
                    words.get(
                            "wiring.made",
                            made.wires().size(),
                            made.splices().size(),
                            made.cables().size(),
                            made.problems().size()),
                    made.problems().isEmpty()
                            ? words.get("wiring.no-problems")
                            : made.problems().stream().map(each -> "• " + each).collect(Collectors.joining("\n")));
        }
        shown = Optional.of(made);
        settle();
    }

    /** What pressing the button does by now: the wires shown, and the outputs in the states. */
    private void settle() {
        edit = Optional.empty();
        shown.ifPresent(made -> {
            List<Edit> edits = new ArrayList<>();
            made.edit().ifPresent(edits::add);
            try {
                edits.addAll(states.edits());
            } catch (IllegalArgumentException unfit) {
                problems.setText(Words.said(unfit));
                edits.clear();
            }
            if (!edits.isEmpty()) {
                edits.add(0, new ChangeWiringRules(words.text("wiring.edit"), rules()));
                edit = Optional.of(new Compound(words.text("wiring.edit"), edits));
            }
        });
        ok.setEnabled(edit.isPresent());
    }

    private void say(String line, String below) {
        summary.setText(line);
        summary.setToolTipText(line);
        problems.setText(below);
        problems.setCaretPosition(0);
    }

    /** Ends what is under way. */
    void stop() {
        worker.stop();
    }

    JButton okButton() {
        return ok;
    }

    /** What would be made, in one line. */
    String summaryText() {
        return summary.getText();
    }
}
