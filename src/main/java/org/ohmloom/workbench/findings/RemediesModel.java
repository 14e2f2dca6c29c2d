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

/** Remedies as rows of a table, and in words. */
final class RemediesModel extends AbstractTableModel {

    private static final long serialVersionUID = 1L;
    private static final List<String> TITLES =
            List.of("Remedy", "Change", "Clears it", "What it does", "Copper", "Length", "Gone", "New");

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
        return TITLES.size();
    }

    @Override
    public String getColumnName(int column) {
        return TITLES.get(column);
    }

    @Override
    public Object getValueAt(int row, int column) {
        Remedy remedy = remedies.get(row);
        return switch (column) {
            case 0 -> remedy.kind().words();
            case 1 -> label(remedy);
            case 2 -> remedy.clears() ? "yes" : "no";
            case 3 -> remedy.effect().map(Effect::words).map(units::text).orElse("");
            case 4 -> signed(remedy.addedCopperKg(), units.quantity(Math.abs(remedy.addedCopperKg()), Dimension.MASS));
            case 5 -> signed(remedy.addedMetres(), units.metres(Math.abs(remedy.addedMetres())));
            case 6 -> remedy.removed().size();
            default -> remedy.added().size();
        };
    }

    private String label(Remedy remedy) {
        return units.text(remedy.edit().label());
    }

    private static String signed(double value, String magnitude) {
        return value == 0 ? "0" : (value < 0 ? "−" : "+") + magnitude;
    }

    /** One line about all of them. */
    static String summary(RemedyList list) {
        if (list.remedies().isEmpty()) {
            return "None of the usual remedies applies.";
        }
        String foreseen = list.foreseen() == 0
                ? ""
                : list.foreseen() + " changes and combinations foreseen" + (list.spent() ? ", no more; " : "; ");
        String untried = list.untried() == 0 ? "" : "; " + list.untried() + " more were not tried";
        return String.format(
                Locale.ROOT,
                "%s%d tried on a copy, %d clear the finding%s.",
                foreseen,
                list.remedies().size(),
                list.clearing(),
                untried);
    }

    /** What one of them changes. */
    String details(Remedy remedy) {
        List<String> steps = remedy.steps();
        List<String> lines = new ArrayList<>();
        for (int k = 0; k < steps.size(); k++) {
            lines.add((steps.size() == 1 ? "" : k + 1 + ". ") + units.text(steps.get(k)));
        }
        if (steps.size() > 1) {
            lines.add("Applied together as one step that can be undone.");
        }
        remedy.effect().ifPresent(effect -> lines.add(capital(units.text(effect.words()))));
        if (!remedy.unmeasured().isEmpty()) {
            lines.add("Without the length and copper of " + String.join(", ", remedy.unmeasured())
                    + ": no length is entered and no way lies between its ends.");
        }
        findings(lines, "Gone: ", remedy.removed());
        findings(lines, "New: ", remedy.added());
        return String.join("\n", lines);
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private void findings(List<String> lines, String what, List<Finding> findings) {
        findings.forEach(finding ->
                lines.add(what + finding.severity().name().toLowerCase(Locale.ROOT) + ": " + finding.message(units)));
    }
}
