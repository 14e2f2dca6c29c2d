package org.ohmloom.judged;

import java.util.Optional;
import org.ohmloom.model.Harness;

/**
 * One fault in a generated harness.
 *
 * @param kind    what was done
 * @param rule    id of the rule that is to find it
 * @param subject the element it is to name
 * @param size    how large it was asked to be as a share of its limit, half to twice
 * @param harness the harness with it
 */
record Fault(FaultKind kind, String rule, String subject, double size, Harness harness) {

    /** The fault in the harness that was made faulty, if one was. */
    static Optional<Fault> in(FaultKind kind, String rule, String subject, double size, Optional<Harness> faulty) {
        return faulty.map(harness -> new Fault(kind, rule, subject, size, harness));
    }

    /** Rule and subject, as the judge names them. */
    String key() {
        return rule + " " + subject;
    }
}
