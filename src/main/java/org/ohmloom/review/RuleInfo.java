package org.ohmloom.review;

import static org.ohmloom.units.Require.notBlank;

/**
 * What a rule is about.
 *
 * @param id       stable kebab-case text, for example {@code no-return-path}
 * @param title    one line for people
 * @param severity severity of its findings unless the design basis says otherwise
 * @param source   document, clause and edition, or the words "common practice, no source"
 * @param why      one paragraph: what goes wrong
 * @param remedy   how to mend it
 */
public record RuleInfo(String id, String title, Severity severity, String source, String why, String remedy) {

    public RuleInfo {
        notBlank(id, "id of a rule");
        notBlank(title, "title of rule " + id);
        notBlank(source, "source of rule " + id);
        notBlank(why, "reason of rule " + id);
        notBlank(remedy, "remedy of rule " + id);
    }
}
