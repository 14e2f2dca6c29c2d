package org.ohmloom.workbench.study;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.EnumMap;
import java.util.Map;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.analysis.tolerance.Spread;
import org.ohmloom.analysis.tolerance.SpreadKind;
import org.ohmloom.analysis.tolerance.Spreads;
import org.ohmloom.analysis.tolerance.TolerancePlan;
import org.ohmloom.model.Harness;
import org.ohmloom.workbench.widget.TextUndo;
import org.ohmloom.workbench.words.Words;

/** What a person may enter for a study of tolerances: a spread of each kind, how many harnesses, a seed. */
final class ToleranceFields extends JPanel {
    private static final Words WORDS = Words.of("tolerance");

    private static final long serialVersionUID = 1L;

    private final transient Map<SpreadKind, JTextField> spreads = new EnumMap<>(SpreadKind.class);
    private final JTextField runs = new JTextField(String.valueOf(TolerancePlan.USUAL_RUNS), 5);
    private final ToleranceScope scope = new ToleranceScope();
    private final JTextField seed = new JTextField(String.valueOf(TolerancePlan.USUAL_SEED), 4);

    ToleranceFields() {
        super(new MigLayout("insets 2, gapx 6, gapy 3, wrap 8", "[][][]12[][]12[][]12[][]"));
        setOpaque(false);
        for (SpreadKind kind : SpreadKind.values()) {
            spreads.put(kind, new JTextField(10));
        }
        place(SpreadKind.CONDUCTOR);
        place(SpreadKind.LENGTH);
        place(SpreadKind.JOINT);
        place("runs", runs);
        place(SpreadKind.LOAD);
        place(SpreadKind.SOURCE);
        place(SpreadKind.AMBIENT);
        place("seed", seed);
        place("load", scope.loads(), "span 3, growx, wmax 280");
        place("in", scope.states(), "span 3, growx, wmax 280");
    }

    private void place(SpreadKind kind) {
        place("kind." + kind.key(), spreads.get(kind));
    }

    private void place(String key, JTextField field) {
        TextUndo.install(field);
        place(key, field, "");
    }

    private void place(String key, JComponent field, String cell) {
        JLabel label = new JLabel(WORDS.get(key));
        label.setLabelFor(field);
        field.setName("tolerance-" + key.replace("kind.", ""));
        field.setToolTipText(WORDS.get(key + ".about"));
        field.getAccessibleContext().setAccessibleName(WORDS.get(key));
        add(label);
        add(field, cell);
    }

    /** Shows the usual spreads in the fields that are empty, and what can be looked at. */
    void show(Harness harness, Spreads usual) {
        scope.show(harness);
        spreads.forEach((kind, field) -> field.putClientProperty(
                FlatClientProperties.PLACEHOLDER_TEXT,
                usual.of(kind).map(Spread::typed).orElse(WORDS.get("by-table"))));
    }

    /**
     * What is asked by the fields.
     *
     * @throws IllegalArgumentException with what is wrong in one of them
     */
    TolerancePlan plan(Spreads usual) {
        Spreads said = usual;
        for (Map.Entry<SpreadKind, JTextField> each : spreads.entrySet()) {
            String text = each.getValue().getText().strip();
            if (!text.isEmpty()) {
                said = said.with(each.getKey().key() + "=" + text);
            }
        }
        return new TolerancePlan((int) number(runs, "runs"), number(seed, "seed"), said, scope.state(), scope.load());
    }

    private static long number(JTextField field, String key) {
        String text = field.getText().strip();
        if (!text.matches("[0-9]{1,9}")) {
            throw new IllegalArgumentException(WORDS.get("no-number", WORDS.get(key), text));
        }
        return Long.parseLong(text);
    }
}
