package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;

import java.util.List;

/**
 * A finding accepted as it is, with the reason; printed in the pack.
 *
 * @param id       identity
 * @param rule     id of the review rule
 * @param subjects ids of the elements the finding is about, sorted
 * @param reason   why it is accepted
 * @param by       who accepted it
 * @param date     when, as ISO 8601 date text
 */
public record Waiver(WaiverId id, String rule, List<String> subjects, String reason, String by, String date)
        implements Element {

    public Waiver {
        notBlank(rule, "rule of waiver %s", id);
        subjects = subjects.stream().sorted(NaturalOrder.INSTANCE).toList();
        notBlank(reason, "reason of waiver %s", id);
    }
}
