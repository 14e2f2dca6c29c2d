package org.ohmloom.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.ohmloom.review.Rule;
import org.ohmloom.review.RuleExamples;
import org.ohmloom.review.RuleInfo;
import org.ohmloom.review.Rules;

/**
 * Keeps {@code src/docs/rules.md} the same as the rules themselves. After a change of a rule,
 * {@code mvn test -Dtest=RulesPageTest -Dohmloom.update=true} writes the page anew.
 */
class RulesPageTest {

    private static final Path PAGE = Path.of("src/docs/rules.md");

    @Test
    void thePageListsEveryRuleAsItIs() throws Exception {
        if (Boolean.getBoolean("ohmloom.update")) {
            Files.writeString(PAGE, page());
        }
        assertEquals(page(), Files.readString(PAGE));
    }

    private static String page() {
        StringBuilder page = new StringBuilder(
                """
                # The rules of the review

                A rule judges a harness by one point of good practice and reports findings: what is wrong, where, by how much, and by
                which source. Results are a design aid; they replace neither local codes nor a qualified person.

                - An **error** must not be built like this. A **warning** should be looked at by a person. A **note** is worth knowing.
                - A finding can be accepted as it is with a waiver; it is then listed with the reason.
                - Each rule comes with two small invented harnesses in `src/main/resources/org/ohmloom/review/examples`: one that breaks
                  it and one that nearly does.

                The rules stand in the order of the report. This page is written by
                `mvn test -Dtest=RulesPageTest -Dohmloom.update=true`; without the property the test fails when page and rules differ.

                | rule | what it finds | severity |
                |---|---|---|
                """);
        for (Rule rule : Rules.ALL) {
            RuleInfo info = rule.info();
            page.append("| [`")
                    .append(info.id())
                    .append("`](#")
                    .append(info.id())
                    .append(") | ");
            page.append(info.title()).append(" | ").append(severity(info)).append(" |\n");
        }
        for (Rule rule : Rules.ALL) {
            RuleInfo info = rule.info();
            page.append("\n## ").append(info.id()).append("\n\n");
            page.append("**")
                    .append(info.title())
                    .append("** (")
                    .append(severity(info))
                    .append("). ");
            page.append(info.why()).append("\n\n");
            page.append("- Remedy: ").append(info.remedy()).append("\n");
            page.append("- Source: ").append(info.source()).append(".\n");
            page.append("- Breaks it: ")
                    .append(RuleExamples.sentence(RuleExamples.triggers(info)))
                    .append("\n");
            page.append("- Nearly does: ")
                    .append(RuleExamples.sentence(RuleExamples.nearly(info)))
                    .append("\n");
        }
        return page.toString();
    }

    private static String severity(RuleInfo info) {
        return info.severity().name().toLowerCase(Locale.ROOT);
    }
}
