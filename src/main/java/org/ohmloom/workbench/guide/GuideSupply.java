package org.ohmloom.workbench.guide;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.analysis.start.StartCraft;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.workbench.widget.Choices;
import org.ohmloom.workbench.words.Words;

/** The first page of the guide: what it is for, what feeds it, and the places where things sit. */
final class GuideSupply extends JPanel {

    private static final long serialVersionUID = 1L;

    private static final double USUAL_CELSIUS = 40;

    private final transient Words words = Words.of("guide");
    private final JTextField title = new JTextField(words.get("untitled"));
    private final JComboBox<String> craft = new JComboBox<>(
            Arrays.stream(StartCraft.values()).map(GuideAnswers::shown).toArray(String[]::new));
    private final JComboBox<String> volts = new JComboBox<>(new String[] {"12 V", "24 V", "48 V"});
    private final JTextField ampHours = new JTextField("80 Ah");
    private final JTextField alternator = new JTextField();
    private final JComboBox<String> supplyPlace = new JComboBox<>();
    private final JComboBox<String> switchPlace = new JComboBox<>();
    private final JComboBox<String> unitPlace = new JComboBox<>();
    private final transient ShownUnits units;
    private final GuideTable places;

    GuideSupply(ShownUnits units) {
        super(new MigLayout("insets 0, fill, wrap 4, gapy 6", "[][grow,fill]18[][grow,fill]"));
        this.units = units;
        places = new GuideTable(
                "places",
                words.get("places"),
                words.get("places.about"),
                List.of(
                        GuideTable.Head.typed(words.get("name")),
                        GuideTable.Head.typed(words.get("ambient")),
                        GuideTable.Head.typed(words.get("metres"))),
                () -> place("", 2));
        places.row(place(words.get("place.battery"), 0.8));
        places.row(place(words.get("place.driver"), 1.5));
        places.row(place(words.get("place.rear"), 4));
        alternator.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, words.get("no-unit"));
        add("title", title);
        add("craft", craft);
        add("volts", volts);
        add("amp-hours", ampHours);
        add("supply-place", supplyPlace);
        add("alternator", alternator);
        add("switch-place", switchPlace);
        add("unit-place", unitPlace);
        add(places, "span, grow, push, gaptop 8");
        places.table().getModel().addTableModelListener(event -> fill());
        fill();
        switchPlace.setSelectedIndex(1);
    }

    private List<String> place(String name, double metres) {
        return List.of(name, units.celsius(USUAL_CELSIUS), units.metres(metres));
    }

    private void add(String key, JComponent field) {
        JLabel label = new JLabel(words.get(key));
        label.setLabelFor(field);
        field.setName("guide-" + key);
        field.getAccessibleContext().setAccessibleName(words.get(key));
        add(label);
        add(field, "wmin 60");
    }

    /** Names of the places entered; at least one, maybe blank. */
    List<String> placeNames() {
        List<String> names = IntStream.range(0, places.table().getModel().getRowCount())
                .mapToObj(row -> String.valueOf(places.table().getModel().getValueAt(row, 0))
                        .strip())
                .filter(name -> !name.isEmpty())
                .toList();
        return names.isEmpty() ? List.of("") : names;
    }

    private void fill() {
        List<String> names = placeNames();
        Choices.put(supplyPlace, names);
        Choices.put(switchPlace, names);
        Choices.put(
                unitPlace,
                Stream.concat(Stream.of(GuideAnswers.none()), names.stream()).toList());
    }

    GuideAnswers answers(List<List<String>> loads, List<List<String>> sensors) {
        places.commit();
        return new GuideAnswers(
                title.getText().strip(),
                text(craft),
                text(volts),
                ampHours.getText(),
                text(supplyPlace),
                alternator.getText(),
                text(switchPlace),
                text(unitPlace),
                places.rows(),
                loads,
                sensors,
                units);
    }

    private static String text(JComboBox<String> box) {
        return String.valueOf(box.getSelectedItem());
    }
}
