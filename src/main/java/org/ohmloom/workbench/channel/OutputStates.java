package org.ohmloom.workbench.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.SettingText;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Setting;
import org.ohmloom.signal.wiring.OutputOff;
import org.ohmloom.workbench.widget.WrappedText;
import org.ohmloom.workbench.words.Words;

/** Outputs that are on in no operating state: told, and set in the states that ask for what they serve, as proposed or as typed. */
final class OutputStates extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int FIRST = 2;

    private final transient Harness harness;
    private final transient List<OutputOff> off;
    private final transient List<OperatingState> states;
    private final JCheckBox set;
    private final TypedRows rows;

    /**
     * A panel.
     *
     * @param changed called after every change
     */
    OutputStates(Words words, Harness harness, Runnable changed) {
        super(new MigLayout("insets 0, fill, wrap 1, gapy 2", "[grow,fill]"));
        this.harness = harness;
        this.off = OutputOff.of(harness);
        this.states = List.copyOf(harness.states().all());
        List<String> columns = new ArrayList<>(List.of(words.get("wiring.off.output"), words.get("wiring.off.serves")));
        states.forEach(state -> columns.add(state.name()));
        this.rows = new TypedRows(words, "wiring-states", words.get("wiring.off"), columns);
        this.set = new JCheckBox(words.get("wiring.off.set"), true);
        set.setName("wiring-set-states");
        set.setToolTipText(words.get("wiring.off.set.about"));
        set.addActionListener(event -> changed.run());
        rows.fixed(FIRST, 3);
        rows.fill(off.stream().map(this::row).toList());
        rows.onChange(row -> changed.run());
        add(WrappedText.of(words.get("wiring.off.about", off.size()), "Ohmloom.soft", 0), "wmin 0, w 880!");
        add(set, "wmin 0");
        add(rows, "grow, push");
        setVisible(!off.isEmpty());
    }

    private List<String> row(OutputOff each) {
        List<String> cells = new ArrayList<>(List.of(
                each.output().toString(),
                each.served().id() + " " + each.served().name()));
        states.forEach(state -> cells.add(Optional.ofNullable(each.proposed().get(state.id()))
                .map(OutputStates::text)
                .orElse("")));
        return cells;
    }

    private static String text(Setting setting) {
        return SettingText.of(setting);
    }

    /**
     * The edits that set what stands in the cells; none where a person does not want that.
     *
     * @throws IllegalArgumentException when a cell does not fit; the message says what would be right
     */
    List<Edit> edits() {
        List<Edit> edits = new ArrayList<>();
        if (!set.isSelected()) {
            return edits;
        }
        List<List<String>> cells = rows.rows();
        for (int row = 0; row < off.size(); row++) {
            for (int k = 0; k < states.size(); k++) {
                String typed = cells.get(row).get(FIRST + k);
                if (!typed.isEmpty()) {
                    edits.add(off.get(row).set(harness, states.get(k).id(), typed));
                }
            }
        }
        return edits;
    }
}
