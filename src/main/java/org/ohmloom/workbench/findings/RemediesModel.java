package org.ohmloom.workbench.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.table.AbstractTableModel;
import org.ohmloom.remedy.Effect;
import org.ohmloom.remedy.Remedy;
import org.ohmloom.remedy.RemedyList;
import org.ohmloom.review.Finding;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.words.Text;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** Remedies as rows of a table, and in words. */
final class RemediesModel extends AbstractTableModel {
    private static final Words WORDS = Words.of("findings");

    private static final long serialVersionUID = 1L;

    /** Widths of the columns, px. */
    static final List<Integer> WIDTHS = List.of(135, 360, 60, 220, 75, 75, 50, 45);

    private transient List<Remedy> remedies = List.of();
    private final transient ShownUnits units;

    /** A model that writes quantities in these units. */
    RemediesModel(ShownUnits units) {
        this.units = units;
    }

    void show(List<Remedy> changed) {
        remedies = List.copyOf(changed);
        fireTableDataChanged();
    }

    List<Remedy> remedies() {
        return remedies;
    }

    @Override
    public int getRowCount() {
        // the table asks while this object is still being made
        return remedies == null ? 0 : remedies.size();
    }

    @Override
    public int getColumnCount() {
        return titles().size();
    }

    @Override
    public String getColumnName(int column) {
        return titles().get(column);
    }

    @Override
    public Object getValueAt(int row, int column) {
        Remedy remedy = remedies.get(row);
        return switch (column) {
            case 0 -> Words.said(remedy.kind().words());
            case 1 -> label(remedy);
            case 2 -> TypedNumbers.yesOrNo(remedy.clears());
            case 3 -> remedy.effect()
                    .map(Effect::words)
                    .map(Words::said)
                    .map(units::text)
                    .orElse("");
            case 4 -> signed(remedy.addedCopperKg(), units.quantity(Math.abs(remedy.addedCopperKg()), Dimension.MASS));
            case 5 -> signed(remedy.addedMetres(), units.metres(Math.abs(remedy.addedMetres())));
            case 6 -> remedy.removed().size();
            default -> remedy.added().size();
        };
    }

    private String label(Remedy remedy) {
        return units.text(Words.said(remedy.edit().label()));
    }

    private static String signed(double value, String magnitude) {
        return value == 0 ? "0" : (value < 0 ? "−" : "+") + magnitude;
    }

    /** One line about all of them. */
    static String summary(RemedyList list) {
        if (list.remedies().isEmpty()) {
            return WORDS.get("remedies.none-of-the-usual");
        }
        String foreseen = list.foreseen() == 0
                ? ""
                : WORDS.get(
                        "remedies.changes-and-combinations-foreseen",
                        list.foreseen(),
                        list.spent() ? WORDS.get("remedies.no-more") : "; ");
        String untried = list.untried() == 0 ? "" : WORDS.get("remedies.more-were-not-tried", list.untried());
        return WORDS.get("remedies.tried-on-a-copy", foreseen, list.remedies().size(), list.clearing(), untried);
    }

    /** What one of them changes. */
    String details(Remedy remedy) {
        List<Text> steps = remedy.steps();
        List<String> lines = new ArrayList<>();
        for (int k = 0; k < steps.size(); k++) {
            lines.add((steps.size() == 1 ? "" : k + 1 + ". ") + units.text(Words.said(steps.get(k))));
        }
        if (steps.size() > 1) {
            lines.add(WORDS.get("remedies.applied-together-as-one"));
        }
        remedy.effect().ifPresent(effect -> lines.add(capital(units.text(Words.said(effect.words())))));
        if (!remedy.unmeasured().isEmpty()) {
            lines.add(WORDS.get("remedies.without-the-length-and", String.join(", ", remedy.unmeasured())));
        }
        findings(lines, WORDS.get("remedies.gone"), remedy.removed());
        findings(lines, WORDS.get("remedies.new"), remedy.added());
        return String.join("\n", lines);
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private void findings(List<String> lines, String what, List<Finding> findings) {
        findings.forEach(finding -> lines.add(
                what + TradeWords.named(finding.severity()) + ": " + finding.message(units, Words.language())));
    }

    private static List<String> titles() {
        return List.of(
                WORDS.get("remedies.remedy"),
                WORDS.get("remedies.change"),
                WORDS.get("remedies.clears-it"),
                WORDS.get("remedies.what-it-does"),
                WORDS.get("remedies.copper"),
                WORDS.get("remedies.length"),
                WORDS.get("remedies.gone-2"),
                WORDS.get("remedies.new-2"));
    }
}
