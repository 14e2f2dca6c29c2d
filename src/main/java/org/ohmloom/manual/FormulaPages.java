package org.ohmloom.manual;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.ohmloom.manual.formula.Formula;
import org.ohmloom.manual.formula.Formulas;
import org.ohmloom.manual.formula.Symbol;
import org.ohmloom.manual.formula.Worked;

/** Writes the pages of the formulas; the worked example of each is computed with the program's own code. */
final class FormulaPages {

    static final String FOLDER = "formulas";

    private static final String HEAD =
            """
            # Formulas

            What the results are worked out with. Every page has the formula, its symbols with their units, where it comes from, and an
            example worked by hand beside what the program's own code makes of the same values.
            """;

    private FormulaPages() {}

    /** The page of a formula. */
    static String id(Formula formula) {
        return FOLDER + "/" + formula.key();
    }

    /** The page of the formula a result cites, if it cites one. */
    static Optional<String> citedIn(String text) {
        return Formulas.all()
                .filter(formula -> !formula.cited().isEmpty() && text.contains(formula.cited()))
                .map(FormulaPages::id)
                .findFirst();
    }

    static Map<String, String> write(UnaryOperator<String> titles) {
        Map<String, String> pages = new LinkedHashMap<>();
        StringBuilder list = new StringBuilder(HEAD);
        for (Formulas.Topic topic : Formulas.TOPICS) {
            list.append("\n## ").append(topic.title()).append("\n\n");
            for (Formula formula : topic.formulas()) {
                list.append("- [" + formula.title() + "](" + formula.key() + ".md): `" + formula.expression() + "`\n");
                pages.put(id(formula), page(formula, titles));
            }
        }
        pages.put(FOLDER + "/" + Manual.HOME, list.toString());
        return pages;
    }

    private static String page(Formula formula, UnaryOperator<String> titles) {
        StringBuilder page = new StringBuilder("# " + formula.title() + "\n\n    " + formula.expression() + "\n\n");
        page.append("| symbol | what it is | unit |\n|---|---|---|\n");
        for (Symbol symbol : formula.symbols()) {
            page.append("| `" + symbol.sign() + "` | " + symbol.meaning() + " | " + symbol.unit() + " |\n");
        }
        page.append("\n" + formula.about() + "\n\n**Source.** " + formula.source() + ".\n");
        if (!formula.cited().isEmpty()) {
            page.append("\nResults name it by: `" + formula.cited() + "`\n");
        }
        Worked worked = formula.worked();
        String unit = worked.unit().isEmpty() ? "" : " " + worked.unit();
        page.append("\n## Worked example\n\n" + worked.given() + "\n\n- By hand: " + worked.steps() + "\n");
        page.append("- By the program: " + digits(worked.program().getAsDouble()) + unit + "\n");
        page.append("\nSeen in: ");
        for (String seen : formula.seen()) {
            page.append("[" + titles.apply(seen) + "](../" + seen + ".md), ");
        }
        return page.append("see also [all formulas](README.md).\n").toString();
    }

    /** A number with five digits, small ones with a power of ten. */
    private static String digits(double value) {
        return Math.abs(value) < 1e-3
                ? String.format(Locale.ROOT, "%.4e", value).replaceFirst("e-0?", "e-")
                : new BigDecimal(value, new MathContext(5)).stripTrailingZeros().toPlainString();
    }
}
