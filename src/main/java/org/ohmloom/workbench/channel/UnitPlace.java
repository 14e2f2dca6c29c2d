package org.ohmloom.workbench.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.FreshIds;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.signal.unit.UnitDescription;
import org.ohmloom.workbench.widget.TextUndo;
import org.ohmloom.workbench.words.Words;

/** Identity, name and place of a unit that is put into a harness. */
final class UnitPlace extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Words words;
    private final transient Harness harness;
    private final JTextField id = new JTextField(6);
    private final JTextField name = new JTextField(24);
    private final JComboBox<String> place = new JComboBox<>();
    private String proposedName = "";

    UnitPlace(Harness harness, Words words, Runnable changed) {
        super(new MigLayout("insets 0, wrap 4, gap 8 6, fillx", "[right][grow,fill][right][grow,fill]"));
        this.words = words;
        this.harness = harness;
        id.setText(new FreshIds(harness).next("U"));
        List<String> places = new ArrayList<>(List.of(words.get("nowhere")));
        harness.breakouts().all().forEach(each -> places.add(text(each)));
        places.forEach(place::addItem);
        place.addActionListener(event -> changed.run());
        field("unit.id", "unit-id", id);
        field("unit.name", "unit-name", name);
        field("unit.place", "unit-place", place);
        TextUndo.install(id);
        TextUndo.install(name);
    }

    private static String text(Breakout breakout) {
        return breakout.id() + "  " + breakout.name();
    }

    private void field(String key, String named, JComponent field) {
        JLabel label = new JLabel(words.get(key));
        label.setLabelFor(field);
        field.setName(named);
        field.getAccessibleContext().setAccessibleName(words.get(key));
        add(label);
        add(field);
    }

    /** Proposes the title of a unit as its name, unless a person has typed another. */
    void propose(UnitDescription unit) {
        if (name.getText().equals(proposedName)) {
            proposedName = unit.title().split(",", 2)[0];
            name.setText(proposedName);
        }
    }

    /**
     * The edit that puts a unit in here.
     *
     * @throws IllegalArgumentException when that cannot be; one sentence says why
     */
    Edit edit(UnitDescription unit) {
        String typed = id.getText().strip();
        if (harness.element(typed).isPresent()) {
            throw new IllegalArgumentException(words.get("unit.taken", typed));
        }
        String called = name.getText().isBlank() ? unit.title() : name.getText().strip();
        return unit.into(harness, new ComponentId(typed), called, place());
    }

    private Optional<BreakoutId> place() {
        return harness.breakouts().all().stream()
                .filter(each -> text(each).equals(place.getSelectedItem()))
                .map(Breakout::id)
                .findFirst();
    }
}
