package org.ohmloom.review;

import static org.ohmloom.units.Require.notBlank;

import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/**
 * What a rule is about. What it says stands in the bundle {@code rules}, under its id.
 *
 * @param id       stable kebab-case text, for example {@code no-return-path}
 * @param severity severity of its findings unless the design basis says otherwise
 */
public record RuleInfo(String id, Severity severity) {

    /** What all rules say. */
    static final MessageBundle TEXTS = MessageBundle.beside(RuleInfo.class, "rules");

    public RuleInfo {
        notBlank(id, "id of a rule");
    }

    /** One line for people. */
    public Text title() {
        return text("title");
    }

    /** Document, clause and edition, or the words "common practice, no source". */
    public Text source() {
        return text("source");
    }

    /** One paragraph: what goes wrong. */
    public Text why() {
        return text("why");
    }

    /** How to mend it. */
    public Text remedy() {
        return text("fix");
    }

    /** A phrase of this rule with its gaps filled. */
    Text text(String name, Object... values) {
        return TEXTS.text(key(name), values);
    }

    /** The key of a text of this rule; where it has none of that name, of the one that all rules share. */
    String key(String name) {
        String own = id + "." + name;
        return TEXTS.has(own) ? own : "any." + name;
    }
}
