package org.ohmloom.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.ohmloom.review.Rule;
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
        StringBuilder page = new StringBuilder();
        page.append("# The rules of the review\n\n");
        page.append(
                "In the order of the report. An error must not be built like this, a warning should be looked at by a");
        page.append(
                " person, a note is worth\nknowing. Two small harnesses for each rule, one that breaks it and one that");
        page.append(" nearly does, are in\n`src/main/resources/org/ohmloom/review/examples`.\n");
        for (Rule rule : Rules.ALL) {
            RuleInfo info = rule.info();
            page.append("\n## ").append(info.title()).append("\n\n");
            page.append("`").append(info.id()).append("`, ");
            page.append(info.severity().name().toLowerCase(Locale.ROOT)).append(". Source: ");
            page.append(info.source()).append(".\n\n");
            page.append(info.why()).append("\n\n");
            page.append("*Remedy:* ").append(info.remedy()).append("\n");
        }
        return page.toString();
    }
}
