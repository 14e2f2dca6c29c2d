package org.ohmloom.review;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.ohmloom.model.Harness;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessText;

/**
 * Two small invented harnesses for each rule: one that breaks it and one that nearly does. They serve as tests and as
 * something to look at for a person who wonders what a finding means.
 */
public final class RuleExamples {

    private RuleExamples() {}

    /** A harness that breaks the rule. */
    public static Harness triggers(RuleInfo rule) {
        return read(rule, "triggers");
    }

    /** A harness that stays just within the rule. */
    public static Harness nearly(RuleInfo rule) {
        return read(rule, "nearly");
    }

    /** What is wrong with an example, or what keeps it right: its first note, one sentence. */
    public static String sentence(Harness example) {
        return example.notes().all().iterator().next().text();
    }

    private static Harness read(RuleInfo rule, String which) {
        String name = "examples/" + rule.id() + "/" + which + ".harness.json";
        try (InputStream in = RuleExamples.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalArgumentException("rule " + rule.id() + " comes without the example " + name);
            }
            return HarnessText.read(new String(in.readAllBytes(), StandardCharsets.UTF_8), Path.of(name));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        } catch (HarnessFileException broken) {
            throw new IllegalStateException(broken.getMessage(), broken);
        }
    }
}
