package org.ohmloom.workbench.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.FreshIds;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.WireEnd;
import org.ohmloom.signal.unit.Joints;
import org.ohmloom.signal.unit.UnitDescription;
import org.ohmloom.signal.wiring.UnitFeed;
import org.ohmloom.signal.wiring.WiringMade;
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
    private final JComboBox<String> feed = new JComboBox<>();
    private final JComboBox<String> ground = new JComboBox<>();
    private String proposedName = "";

    UnitPlace(Harness harness, Words words) {
        super(new MigLayout("insets 0, wrap 4, gap 8 6, fillx", "[right][grow,fill][right][grow,fill]"));
        this.words = words;
        this.harness = harness;
        id.setText(new FreshIds(harness).next("U"));
        fill(
                place,
                words.get("nowhere"),
                harness.breakouts().all().stream().map(UnitPlace::text).toList());
        field("unit.id", "unit-id", id);
        field("unit.name", "unit-name", name);
        field("unit.place", "unit-place", place);
        fill(feed, words.get("unit.no-feed"), feeds().stream().map(this::text).toList());
        fill(
                ground,
                words.get("unit.no-ground"),
                harness.grounds().all().stream().map(UnitPlace::text).toList());
        field("unit.feed", "unit-feed", feed);
        field("unit.ground", "unit-ground", ground);
        TextUndo.install(id);
        TextUndo.install(name);
    }

    private static String text(Breakout breakout) {
        return breakout.id() + "  " + breakout.name();
    }

    /** Choices that can be typed too; the first stands for none. */
    private static void fill(JComboBox<String> box, String none, List<String> choices) {
        box.setEditable(true);
        box.addItem(none);
        choices.forEach(box::addItem);
    }

    /**
     * What is chosen in a box, or typed into it by its identity.
     *
     * @throws IllegalArgumentException when it is none of them; one sentence says so
     */
    private <T> Optional<T> chosen(JComboBox<String> box, List<T> all, Function<T, String> text) {
        String typed = String.valueOf(box.getEditor().getItem()).strip();
        if (typed.isEmpty() || typed.equals(box.getItemAt(0))) {
            return Optional.empty();
        }
        return Optional.of(all.stream()
                .filter(each ->
                        text.apply(each).equals(typed) || text.apply(each).startsWith(typed + " "))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(words.get("unit.none-such", typed))));
    }

    private static String text(GroundPoint ground) {
        return ground.id() + "  " + ground.name();
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
        Edit put = unit.into(harness, new ComponentId(typed), called, place());
        WiringMade fed = UnitFeed.of(put.apply(harness), new ComponentId(typed), chosenFeed(), chosenGround());
        if (!fed.problems().isEmpty()) {
            throw new IllegalArgumentException(String.join("; ", fed.problems()));
        }
        List<Edit> edits = new ArrayList<>(List.of(put));
        fed.edit().ifPresent(edits::add);
        return new Compound(put.label(), edits);
    }

    /** Load sides of fuses and breakers that lead nowhere yet. */
    private List<WireEnd.AtTerminal> feeds() {
        Joints joints = Joints.of(harness);
        return harness.components().all().stream()
                .filter(each -> each.device() instanceof ProtectiveDevice)
                .filter(each -> !joints.isJoined(each.id(), ProtectiveDevice.LOAD_SIDE))
                .map(each -> new WireEnd.AtTerminal(each.id(), ProtectiveDevice.LOAD_SIDE))
                .toList();
    }

    private String text(WireEnd.AtTerminal from) {
        return from.component() + "  "
                + harness.components().get(from.component()).name();
    }

    private Optional<WireEnd.AtTerminal> chosenFeed() {
        return chosen(feed, feeds(), this::text);
    }

    private Optional<GroundPointId> chosenGround() {
        return chosen(ground, List.copyOf(harness.grounds().all()), UnitPlace::text)
                .map(GroundPoint::id);
    }

    private Optional<BreakoutId> place() {
        return chosen(place, List.copyOf(harness.breakouts().all()), UnitPlace::text)
                .map(Breakout::id);
    }
}
