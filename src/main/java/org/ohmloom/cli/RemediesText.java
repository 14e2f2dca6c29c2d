package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.ohmloom.remedy.Effect;
import org.ohmloom.remedy.Remedy;
import org.ohmloom.remedy.RemedyList;
import org.ohmloom.review.Finding;
import org.ohmloom.store.JsonArrayWriter;
import org.ohmloom.store.JsonObjectWriter;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** Remedies that were tried, as text and as JSON. */
final class RemediesText {

    private RemediesText() {}

    /** Every finding with what was tried against it, best first. */
    static void print(List<RemedyList> lists, PrintWriter out) {
        out.println();
        out.println("REMEDIES, each tried on a copy, best first");
        if (lists.isEmpty()) {
            out.println("  nothing to remedy in the returns");
        }
        for (RemedyList list : lists) {
            out.println(String.format(
                    Locale.ROOT,
                    "  %-7s  %s",
                    list.finding().severity().name(),
                    list.finding().message()));
            if (list.remedies().isEmpty()) {
                out.println("           none of the usual remedies applies");
                continue;
            }
            TextTable table = new TextTable()
                    .left("remedy")
                    .left("change")
                    .left("clears it")
                    .left("what it does")
                    .right("copper")
                    .right("length")
                    .right("gone")
                    .right("new");
            list.remedies().forEach(remedy -> row(table, remedy));
            table.print(out);
            if (list.foreseen() > 0) {
                out.println("           " + list.foreseen() + " changes and combinations foreseen by superposition"
                        + (list.spent() ? ", the most there may be: larger combinations were not looked at" : ""));
            }
            if (list.untried() > 0) {
                out.println("           " + list.untried() + " further changes were not tried");
            }
        }
    }

    private static List<String> english(Remedy remedy) {
        return remedy.steps().stream().map(Text::english).toList();
    }

    private static void row(TextTable table, Remedy remedy) {
        List<String> steps = english(remedy);
        table.row(
                remedy.kind().words().english(),
                step(steps.get(0)),
                remedy.clears() ? "yes" : "no",
                remedy.effect().map(Effect::words).map(Text::english).orElse(""),
                signed(remedy.addedCopperKg(), Formats.kilograms(Math.abs(remedy.addedCopperKg()))),
                signed(remedy.addedMetres(), Formats.metres(Math.abs(remedy.addedMetres())))
                        + (remedy.unmeasured().isEmpty() ? "" : " and straps"),
                String.valueOf(remedy.removed().size()),
                String.valueOf(remedy.added().size()));
        steps.stream().skip(1).forEach(step -> table.row("", "and " + step(step), "", "", "", "", "", ""));
    }

    private static String step(String label) {
        return label.replace("mm2", "mm²");
    }

    private static String signed(double value, String magnitude) {
        return value == 0 ? "0" : (value < 0 ? "-" : "+") + magnitude;
    }

    /** Writes them under {@code remedies}. */
    static void write(List<RemedyList> lists, JsonObjectWriter root) {
        root.array(
                "remedies",
                array -> lists.forEach(list -> array.object(item -> {
                    item.put("rule", list.finding().rule());
                    item.texts("subjects", list.finding().subjects());
                    item.array("tried", tried -> list.remedies()
                            .forEach(remedy -> tried.object(entry -> write(remedy, entry))));
                    item.put("untried", list.untried());
                    item.put("foreseen", list.foreseen());
                    item.put("foreseenAll", !list.spent());
                })));
    }

    private static void write(Remedy remedy, JsonObjectWriter entry) {
        entry.put("kind", remedy.kind().words().english());
        entry.put("change", remedy.edit().label().english());
        entry.texts("steps", english(remedy));
        entry.put("clears", remedy.clears());
        remedy.effect()
                .ifPresentOrElse(
                        effect -> entry.object("effect", item -> {
                            item.put("what", effect.what().english());
                            item.put("before", effect.before());
                            item.put("after", effect.after());
                            item.put("unit", effect.unit());
                        }),
                        () -> entry.putNull("effect"));
        entry.put("addedCopperKg", remedy.addedCopperKg());
        entry.put("addedMetres", remedy.addedMetres());
        entry.texts("lengthUnknown", remedy.unmeasured());
        entry.array("removed", array -> findings(remedy.removed(), array));
        entry.array("added", array -> findings(remedy.added(), array));
    }

    private static void findings(List<Finding> findings, JsonArrayWriter array) {
        findings.forEach(finding -> array.object(item -> {
            item.put("rule", finding.rule());
            item.put("severity", finding.severity().name());
            item.texts("subjects", finding.subjects());
        }));
    }
}
