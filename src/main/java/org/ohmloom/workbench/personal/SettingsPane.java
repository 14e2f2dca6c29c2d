package org.ohmloom.workbench.personal;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Vector;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.workbench.command.CommandBook;
import org.ohmloom.workbench.settings.Look;
import org.ohmloom.workbench.settings.Personal;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.settings.Preferences;
import org.ohmloom.workbench.settings.UnitChoice;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.WrappedText;
import org.ohmloom.workbench.words.Words;

/** Look, size, font, units and keys; each takes effect at once and is kept. */
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
        HelpPage.name(this, "dialogs/settings");
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
        unit("sizes", "sizes.", UnitChoice::sizes, ShownUnits.Sizes.values(), UnitChoice::withSizes);
        unit("lengths", "lengths.", UnitChoice::lengths, ShownUnits.Lengths.values(), UnitChoice::withLengths);
        unit(
                "temperatures",
                "temperatures.",
                UnitChoice::temperatures,
                ShownUnits.Temperatures.values(),
                UnitChoice::withTemperatures);
        unit("decimals", "decimals.", UnitChoice::decimals, UnitChoice.Decimals.values(), UnitChoice::withDecimals);
        add(WrappedText.of(words.get("units.about"), "Ohmloom.soft", 0), "skip 1, growx, wmin 0");
        add(keys, "span, grow, push, gaptop 8");
        look.addActionListener(event -> lookChosen());
        zoom.addActionListener(
                event -> personal(before -> before.withZoomPercent(Personal.ZOOMS.get(zoom.getSelectedIndex()))));
        font.addActionListener(event -> personal(before -> before.withFontPoints(
                font.getSelectedIndex() == 0 ? 0 : font.getSelectedIndex() - 1 + Personal.LEAST_POINTS)));
    }

    /** A box for one of the units; its choices are called by a prefix and the names of the constants. */
    private <E extends Enum<E>> void unit(
            String key,
            String prefix,
            Function<UnitChoice, E> now,
            E[] all,
            BiFunction<UnitChoice, E, UnitChoice> with) {
        JComboBox<String> box = new JComboBox<>(Arrays.stream(all)
                .map(each ->
                        words.get(prefix + each.name().toLowerCase(Locale.ROOT).replace('_', '-')))
                .toArray(String[]::new));
        box.setSelectedIndex(now.apply(preferences.now().personal().units()).ordinal());
        field(key, box);
        box.addActionListener(
                event -> personal(before -> before.withUnits(with.apply(before.units(), all[box.getSelectedIndex()]))));
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
