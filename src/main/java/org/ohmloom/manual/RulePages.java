package org.ohmloom.manual;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.ohmloom.review.Rule;
import org.ohmloom.review.RuleExamples;
import org.ohmloom.review.RuleInfo;
import org.ohmloom.review.Rules;

/** Writes the pages of the rules from the rules themselves. */
final class RulePages {

    /** The folder of the pages. */
    static final String FOLDER = "rules";

    private static final String HEAD =
            """
            # Rules

            A rule judges a harness by one point of good practice and reports findings: what is wrong, where, by how much, and by
            which source. Results are a design aid; they replace neither local codes nor a qualified person.

            - An **error** must not be built like this. A **warning** should be looked at by a person. A **note** is worth knowing.
            - A finding can be accepted as it is, with a reason; it is then listed with the reason.
            - Each rule comes with two small invented harnesses in `src/main/resources/org/ohmloom/review/examples`: one that breaks
              it and one that nearly does.

            What is found stands in the pane [Findings](../views/findings.md). The rules stand in the order of the report.

            | rule | what it finds | severity |
            |---|---|---|
            """;

    private RulePages() {}

    /** The pages by their ids. */
    static Map<String, String> write() {
        Map<String, String> pages = new LinkedHashMap<>();
        StringBuilder list = new StringBuilder(HEAD);
        for (Rule rule : Rules.ALL) {
            RuleInfo info = rule.info();
            pages.put(id(info.id()), page(info));
            list.append("| [`" + info.id() + "`](" + info.id() + ".md) | "
                    + info.title().english() + " | " + severity(info) + " |\n");
        }
        pages.put(FOLDER + "/" + Manual.HOME, list.toString());
        return pages;
    }

    /** The page of a rule. */
    static String id(String rule) {
        return FOLDER + "/" + rule;
    }

    private static String page(RuleInfo info) {
        return String.format(
                Locale.ROOT,
                """
                # %s

                Rule `%s`, %s.

                %s

                **Remedy.** %s

                **Source.** %s.

                ## Two examples

                - Breaks it: %s
                - Nearly does: %s

                Both are small invented harnesses, `triggers.harness.json` and `nearly.harness.json` in
                `src/main/resources/org/ohmloom/review/examples/%s`.

                See also: [all rules](README.md), [Findings](../views/findings.md).
                """,
                info.title().english(),
                info.id(),
                severity(info),
                info.why().english(),
                info.remedy().english(),
                info.source().english(),
                RuleExamples.sentence(RuleExamples.triggers(info)),
                RuleExamples.sentence(RuleExamples.nearly(info)),
                info.id());
    }

    private static String severity(RuleInfo info) {
        return switch (info.severity()) {
            case ERROR -> "error";
            case WARNING -> "warning";
            case NOTE -> "note";
        };
    }
}
