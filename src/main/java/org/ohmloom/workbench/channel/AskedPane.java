package org.ohmloom.workbench.channel;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.edit.ChangeWiringRules;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.WiringRules;
import org.ohmloom.signal.pins.Preferences;
import org.ohmloom.workbench.widget.PaneTitle;
import org.ohmloom.workbench.widget.Spoken;
import org.ohmloom.workbench.widget.WrappedText;
import org.ohmloom.workbench.words.Words;

/** What a plan is to avoid, as plain switches, and how many pins of each kind it is to leave free. */
final class AskedPane extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int MOST_SPARE = 99;

    private final transient Words words = Words.of("channels");
    private final transient Harness harness;
    private final JCheckBox quiet = box("avoid.switching");
    private final JCheckBox whole = box("avoid.other-connector");
    private final JCheckBox few = box("avoid.splices");
    private final JCheckBox near = box("avoid.metres");
    private final JCheckBox versatile = box("avoid.versatile");
    private final transient Map<PinRole, JSpinner> spares = new LinkedHashMap<>();
    private final JButton ok = new JButton(words.get("ok"));

    /** A pane; the answer is empty when a person gives up. */
    AskedPane(Harness harness, Preferences now, Consumer<Optional<AskedDialog.Answer>> answer) {
        super(new MigLayout("insets 14 16 12 16, fill, wrap 1, gapy 4", "[grow,fill]"));
        this.harness = harness;
        quiet.setSelected(now.besideSwitchingPoints() > 0);
        whole.setSelected(now.otherConnectorPoints() > 0);
        few.setSelected(now.splicePoints() > 0);
        near.setSelected(now.metrePoints() > 0);
        versatile.setSelected(now.versatilePoints() > 0);
        add(PaneTitle.of(words.get("avoid")));
        add(WrappedText.of(words.get("avoid.about"), "Ohmloom.soft", 0), "wmin 0, w 440!");
        List.of(quiet, whole, few, near, versatile).forEach(this::add);
        add(PaneTitle.of(words.get("spare")), "gaptop 10");
        add(WrappedText.of(words.get("spare.about"), "Ohmloom.soft", 0), "wmin 0, w 440!");
        add(spares());
        ok.setName("asked-ok");
        ok.addActionListener(event -> answer.accept(Optional.of(answer())));
        JButton cancel = new JButton(words.get("cancel"));
        cancel.setName("asked-cancel");
        cancel.addActionListener(event -> answer.accept(Optional.empty()));
        add(ok, "split 2, tag ok, growx 0, gaptop 10");
        add(cancel, "tag cancel, growx 0");
    }

    private JCheckBox box(String key) {
        JCheckBox made = new JCheckBox(words.get(key));
        made.setName(key);
        return made;
    }

    private JPanel spares() {
        JPanel panel = new JPanel(new MigLayout("insets 0, wrap 4, gapx 8, gapy 4", "[right][]20[right][]"));
        Map<PinRole, Integer> now = new LinkedHashMap<>();
        harness.rules().wiringRules().sparePins().forEach(spare -> now.put(spare.role(), spare.pins()));
        for (PinRole role : roles(now.keySet())) {
            JSpinner spinner = new JSpinner(new SpinnerNumberModel((int) now.getOrDefault(role, 0), 0, MOST_SPARE, 1));
            spinner.setName("spare-" + role);
            String text = PinWords.role(role);
            Spoken.name(spinner, text);
            JLabel label = new JLabel(text);
            label.setLabelFor(spinner);
            panel.add(label);
            panel.add(spinner);
            spares.put(role, spinner);
        }
        return panel;
    }

    /** Inputs and outputs the units have, and those pins are kept of already. */
    private Set<PinRole> roles(Set<PinRole> kept) {
        Set<PinRole> roles = EnumSet.noneOf(PinRole.class);
        roles.addAll(kept);
        harness.components().all().stream()
                .filter(component -> component.device() instanceof ControlUnit)
                .flatMap(component -> ((ControlUnit) component.device()).pins().stream())
                .flatMap(pin -> pin.capabilities().stream())
                .filter(role -> role.isInput() || role.isOutput())
                .forEach(roles::add);
        return roles;
    }

    JButton okButton() {
        return ok;
    }

    AskedDialog.Answer answer() {
        Preferences usual = Preferences.USUAL;
        Preferences settled = new Preferences(
                quiet.isSelected() ? usual.besideSwitchingPoints() : 0,
                whole.isSelected() ? usual.otherConnectorPoints() : 0,
                few.isSelected() ? usual.splicePoints() : 0,
                near.isSelected() ? usual.metrePoints() : 0,
                versatile.isSelected() ? usual.versatilePoints() : 0);
        List<WiringRules.SparePins> kept = new ArrayList<>();
        spares.forEach((role, spinner) -> {
            int pins = ((Number) spinner.getValue()).intValue();
            if (pins > 0) {
                kept.add(new WiringRules.SparePins(role, pins));
            }
        });
        WiringRules before = harness.rules().wiringRules();
        Optional<Edit> edit = kept.equals(before.sparePins())
                ? Optional.empty()
                : Optional.of(new ChangeWiringRules(
                        words.text("spare.edit"), new WiringRules(before.colours(), before.signalGauge(), kept)));
        return new AskedDialog.Answer(settled, edit);
    }
}
