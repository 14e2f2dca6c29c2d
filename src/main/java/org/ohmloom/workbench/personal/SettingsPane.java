package org.ohmloom.workbench.personal;

import java.util.List;
import java.util.Vector;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.workbench.command.CommandBook;
import org.ohmloom.workbench.settings.Look;
import org.ohmloom.workbench.settings.Personal;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.settings.Preferences;
import org.ohmloom.workbench.words.Words;

/** Look, size, font and keys; each takes effect at once and is kept. */
final class SettingsPane extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int SYSTEM = 2;

    private final transient Words words = Words.of("personal");
    private final transient PreferenceStore preferences;
    private final transient Runnable apply;
    private final JComboBox<String> look;
    private final JComboBox<String> zoom;
    private final JComboBox<String> font;
    private final KeysTable keys;

    SettingsPane(PreferenceStore preferences, CommandBook book, Runnable apply) {
        super(new MigLayout("insets 14 16 14 16, fill, wrap 2, gapy 6", "[][grow,fill]"));
        this.preferences = preferences;
        this.apply = apply;
        Personal now = preferences.now().personal();
        look = new JComboBox<>(
                new Vector<>(List.of(words.get("look.light"), words.get("look.dark"), words.get("look.system"))));
        look.setSelectedIndex(
                now.followSystem() ? SYSTEM : preferences.now().look().ordinal());
        zoom = new JComboBox<>(
                Personal.ZOOMS.stream().map(percent -> percent + " %").toArray(String[]::new));
        zoom.setSelectedIndex(Personal.ZOOMS.indexOf(now.zoomPercent()));
        font = new JComboBox<>(Stream.concat(
                        Stream.of(words.get("font.system")),
                        IntStream.rangeClosed(Personal.LEAST_POINTS, Personal.MOST_POINTS)
                                .mapToObj(points -> points + " pt"))
                .toArray(String[]::new));
        font.setSelectedIndex(now.fontPoints() == 0 ? 0 : now.fontPoints() - Personal.LEAST_POINTS + 1);
        keys = new KeysTable(book, preferences);
        field("look", look);
        field("zoom", zoom);
        field("font", font);
        add(keys, "span, grow, push, gaptop 8");
        look.addActionListener(event -> lookChosen());
        zoom.addActionListener(
                event -> personal(before -> before.withZoomPercent(Personal.ZOOMS.get(zoom.getSelectedIndex()))));
        font.addActionListener(event -> personal(before -> before.withFontPoints(
                font.getSelectedIndex() == 0 ? 0 : font.getSelectedIndex() - 1 + Personal.LEAST_POINTS)));
    }

    private void field(String key, JComponent box) {
        JLabel label = new JLabel(words.get(key));
        label.setLabelFor(box);
        box.setName("settings-" + key);
        box.getAccessibleContext().setAccessibleName(words.get(key));
        add(label);
        add(box, "growx 0");
    }

    private void lookChosen() {
        int chosen = look.getSelectedIndex();
        change(before -> {
            Preferences with = before.withPersonal(before.personal().withFollowSystem(chosen == SYSTEM));
            return chosen == SYSTEM ? with : with.withLook(Look.values()[chosen]);
        });
    }

    private void personal(UnaryOperator<Personal> step) {
        change(before -> before.withPersonal(step.apply(before.personal())));
    }

    private void change(UnaryOperator<Preferences> step) {
        preferences.change(step);
        apply.run();
    }
}
