package org.ohmloom.review;

import java.util.function.Consumer;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/**
 * Every wire is joined to something at both ends.
 * <p>Silent on the shield of a cable that is joined at one end: that is how a shield is grounded at one point.
 */
final class WireEndLoose implements Rule {

    private static final RuleInfo INFO = new RuleInfo("wire-end-loose", Severity.WARNING);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (Wire wire : evidence.harness().wires().all()) {
            boolean from = wire.from() instanceof WireEnd.Loose;
            boolean to = wire.to() instanceof WireEnd.Loose;
            boolean isShieldAtOneEnd = from != to
                    && wire.signalClass() == SignalClass.SHIELD
                    && wire.cable().isPresent();
            if ((from || to) && !isShieldAtOneEnd) {
                String what = from && to ? "both" : "one";
                report.accept(new FindingDraft(INFO, what)
                        .word("wire", wire.id())
                        .word("joined", from ? wire.to().text() : wire.from().text())
                        .subject(wire.id())
                        .build());
            }
        }
    }
}
