package org.ohmloom.workbench.channel;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javax.swing.DefaultCellEditor;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.table.DefaultTableModel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.draw.study.CalibrationCharts;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.ReturnRules;
import org.ohmloom.model.Sensor;
import org.ohmloom.signal.calibration.SensorCalibration;
import org.ohmloom.signal.channel.SensorChannel;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.study.ChartCanvas;
import org.ohmloom.workbench.study.Picture;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.TextChanges;
import org.ohmloom.workbench.widget.TextUndo;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.TypedRange;
import org.ohmloom.workbench.words.Words;

/**
 * The calibration of one sensor as a form, with its curve, its inverse, its resolution and what is wrong told as it is typed. Where no
 * input reads the sensor, the form has fields for one it is thought to be read by.
 */
final class CalibrationPane extends JPanel {

    private static final long serialVersionUID = 1L;

    /** Between the ends of a range, as it is typed and read. */
    private static final String FORM = " to ";

    private final transient Words words = Words.of("channels");
    private final transient Calibrated of;
    private final transient ReturnRules rules;
    private final transient Optional<Measurement> before;
    private final JTextField quantity = new JTextField(18);
    private final JTextField range = new JTextField(18);
    private final JTextField use = new JTextField(18);
    private final JTextField tau = new JTextField(18);
    private final JTextField rate = new JTextField(18);
    private final transient TypedInput input = new TypedInput(words);
    private final JComboBox<String> kind = new JComboBox<>();
    private final DefaultTableModel cells = new DefaultTableModel(0, 2) {
        private static final long serialVersionUID = 1L;

        @Override
        public boolean isCellEditable(int row, int column) {
            return column == 1 || chosenKind().isTable();
        }
    };
    private final JTable table = new JTable(cells);
    private final ChartCanvas chart;
    private final JTextArea told = new JTextArea(5, 40);
    private final JButton ok = new JButton(words.get("calibrate.enter"));
    private transient Optional<Measurement> typed = Optional.empty();
    private boolean filling;

    /** A pane; the answer is empty when a person gives up. */
    CalibrationPane(Calibrated of, ReturnRules rules, ScenePainter painter, Consumer<Optional<Edit>> answer) {
        super(new MigLayout("insets 14 16 12 16, fill, wrap 2, gap 14 6", "[346!,fill][grow,fill]"));
        this.of = of;
        this.rules = rules;
        this.before = of.sensor().measurement();
        this.chart = new ChartCanvas(words.get("calibrate.chart"), painter, ids -> {});
        setName("calibration");
        HelpPage.name(this, "dialogs/calibration");
        begin();
        add(fields(), "growy");
        JScrollPane picture = new JScrollPane(chart);
        picture.setPreferredSize(new Dimension(UIScale.scale(560), UIScale.scale(330)));
        add(picture, "grow, push");
        told.setName("calibration-told");
        told.setEditable(false);
        told.setLineWrap(true);
        told.setWrapStyleWord(true);
        told.getAccessibleContext().setAccessibleName(words.get("calibrate.told"));
        add(new JScrollPane(told), "span 2, growx, hmin 90");
        ok.setName("calibration-ok");
        ok.addActionListener(event -> {
            commit();
            edit().ifPresent(made -> answer.accept(Optional.of(made)));
        });
        JButton cancel = new JButton(words.get("cancel"));
        cancel.setName("calibration-cancel");
        cancel.addActionListener(event -> answer.accept(Optional.empty()));
        JPanel buttons = new JPanel(new MigLayout("insets 0, fillx", "push[][]"));
        buttons.add(ok, "split 2, tag ok");
        buttons.add(cancel, "tag cancel");
        add(buttons, "span 2, growx");
        refresh();
    }

    private void begin() {
        Arrays.stream(CalibrationKind.values()).map(CalibrationKind::shown).forEach(kind::addItem);
        Measurement now = before.orElseGet(() -> Measurement.of(
                of.component().name(), "%", 0, 100, new Calibration.RatiometricLine(0.1, 0.9, OptionalDouble.empty())));
        quantity.setText(now.quantity());
        range.setText(text(now.lowest(), now.highest(), now.unit()));
        now.use().ifPresent(in -> {
            if (in.lowest().isPresent() && in.highest().isPresent()) {
                use.setText(text(in.lowest().getAsDouble(), in.highest().getAsDouble(), ""));
            }
            in.timeConstantSeconds().ifPresent(seconds -> tau.setText(TypedNumbers.exact(seconds) + " s"));
            in.updateHertz().ifPresent(hertz -> rate.setText(TypedNumbers.exact(hertz) + " Hz"));
        });
        kind.setSelectedIndex(CalibrationKind.of(now.calibration()).ordinal());
        fill(Optional.of(now.calibration()));
        kind.addActionListener(event -> {
            fill(before.map(Measurement::calibration));
            refresh();
        });
        cells.addTableModelListener(event -> refresh());
        List<JTextField> all = new ArrayList<>(List.of(quantity, range, use, tau, rate));
        all.addAll(input.fields());
        for (JTextField field : all) {
            TextChanges.listen(field, this::refresh);
            TextUndo.install(field);
        }
    }

    private static String text(double lowest, double highest, String unit) {
        return (TypedNumbers.exact(lowest) + FORM + TypedNumbers.exact(highest) + " " + unit).strip();
    }

    private JComponent fields() {
        JPanel panel = new JPanel(new MigLayout("insets 0, fill, wrap 2, gap 8 6", "[right][grow,fill]"));
        field(panel, "calibrate.quantity", "calibration-quantity", quantity);
        field(panel, "calibrate.range", "calibration-range", range);
        field(panel, "calibrate.use", "calibration-use", use);
        field(panel, "calibrate.tau", "calibration-tau", tau);
        field(panel, "calibrate.rate", "calibration-rate", rate);
        if (of.channel().isEmpty()) {
            field(panel, "calibrate.full", "calibration-full", input.full());
            field(panel, "calibrate.bits", "calibration-bits", input.bits());
            field(panel, "calibrate.pull-up", "calibration-pull-up", input.pullUp());
            field(panel, "calibrate.shunt", "calibration-shunt", input.shunt());
        }
        field(panel, "calibrate.kind", "calibration-kind", kind);
        table.setName("calibration-cells");
        table.getAccessibleContext().setAccessibleName(words.get("calibrate.cells"));
        table.setTableHeader(null);
        table.setSurrendersFocusOnKeystroke(true);
        table.putClientProperty("terminateEditOnFocusLost", true);
        JTextField field = new JTextField();
        field.getAccessibleContext().setAccessibleName(words.get("calibrate.cells"));
        table.setDefaultEditor(Object.class, new DefaultCellEditor(field));
        JScrollPane scroll = new JScrollPane(table);
        scroll.setPreferredSize(new Dimension(UIScale.scale(320), UIScale.scale(170)));
        panel.add(scroll, "span 2, grow, pushy");
        return panel;
    }

    private void field(JPanel panel, String key, String name, JComponent field) {
        JLabel label = new JLabel(words.get(key));
        label.setLabelFor(field);
        field.setName(name);
        field.setToolTipText(words.get(key + ".about"));
        field.getAccessibleContext().setAccessibleName(words.get(key));
        // what a blank field stands for
        words.find(key + ".hint")
                .ifPresent(hint -> field.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, hint));
        panel.add(label);
        panel.add(field);
    }

    private CalibrationKind chosenKind() {
        return CalibrationKind.values()[Math.max(0, kind.getSelectedIndex())];
    }

    private void fill(Optional<Calibration> calibration) {
        filling = true;
        try {
            if (table.isEditing()) {
                table.getCellEditor().cancelCellEditing();
            }
            cells.setRowCount(0);
            chosenKind().rows(calibration).forEach(cells::addRow);
            table.getColumnModel()
                    .getColumn(0)
                    .setPreferredWidth(UIScale.scale(chosenKind().isTable() ? 160 : 220));
        } finally {
            filling = false;
        }
    }

    private void commit() {
        if (table.isEditing()) {
            table.getCellEditor().stopCellEditing();
        }
    }

    private Measurement read() {
        List<String[]> rows = new ArrayList<>();
        for (int row = 0; row < cells.getRowCount(); row++) {
            rows.add(new String[] {String.valueOf(cells.getValueAt(row, 0)), String.valueOf(cells.getValueAt(row, 1))});
        }
        TypedRange span = TypedRange.parse(range.getText());
        Optional<TypedRange> inUse =
                use.getText().isBlank() ? Optional.empty() : Optional.of(TypedRange.parse(use.getText()));
        Calibration calibration = chosenKind().read(rows, before.map(Measurement::calibration));
        Measurement.Use used = new Measurement.Use(
                inUse.map(each -> OptionalDouble.of(each.lowest())).orElse(OptionalDouble.empty()),
                inUse.map(each -> OptionalDouble.of(each.highest())).orElse(OptionalDouble.empty()),
                TypedNumbers.optional(tau.getText(), Unit.SECOND),
                before.flatMap(Measurement::use)
                        .map(Measurement.Use::bandwidthHertz)
                        .orElse(OptionalDouble.empty()),
                TypedNumbers.optional(rate.getText(), Unit.HERTZ));
        boolean says = inUse.isPresent()
                || used.timeConstantSeconds().isPresent()
                || used.bandwidthHertz().isPresent()
                || used.updateHertz().isPresent();
        return new Measurement(
                quantity.getText().strip(),
                span.unit().or(() -> before.map(Measurement::unit)).orElse(""),
                span.lowest(),
                span.highest(),
                calibration,
                before.map(Measurement::allowedError).orElse(OptionalDouble.empty()),
                before.map(Measurement::tolerances).orElse(List.of()),
                before.map(Measurement::dissipationWattsPerKelvin).orElse(OptionalDouble.empty()),
                says ? Optional.of(used) : Optional.empty());
    }

    private void refresh() {
        if (filling) {
            return;
        }
        try {
            typed = Optional.of(read());
            show(typed.get());
        } catch (IllegalArgumentException unfit) {
            typed = Optional.empty();
            tell(List.of(Words.said(unfit)));
            chart.show(Optional.empty());
        }
        ok.setEnabled(typed.isPresent());
    }

    private void show(Measurement measurement) {
        Sensor sensor = of.sensor().measuring(Optional.of(measurement));
        SensorChannel now =
                of.channel().map(was -> was.with(sensor)).orElseGet(() -> input.reading(of.component(), sensor));
        Optional<SensorCalibration> calibration =
                SensorCalibration.of(now, TypedNumbers.optional(rate.getText(), Unit.HERTZ), rules);
        chart.show(calibration
                .flatMap(CalibrationCharts::of)
                .map(curve -> new Picture(Words.said(curve.title()), curve::scene)));
        List<String> lines = new ArrayList<>();
        calibration.map(each -> new CalibrationTold(words, each)).ifPresent(each -> {
            lines.addAll(each.problems());
            lines.addAll(each.figures());
        });
        tell(lines);
    }

    private void tell(List<String> lines) {
        told.setText(String.join("\n", lines));
        told.setCaretPosition(0);
    }

    private Optional<Edit> edit() {
        return typed.map(measurement -> of.entering(measurement, words));
    }

    JButton okButton() {
        return ok;
    }

    /** What is told of the calibration as it is typed. */
    String toldText() {
        return told.getText();
    }
}
