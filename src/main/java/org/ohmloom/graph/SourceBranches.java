package org.ohmloom.graph;

import org.ohmloom.model.Alternator;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Converter;
import org.ohmloom.model.Device;
import org.ohmloom.model.RegulatedSupply;
import org.ohmloom.model.WireEnd;

/**
 * Branches of what gives power: batteries, alternators, regulated supplies and converters. What batteries and alternators are
 * in the state comes from {@link SourceConditions}.
 */
final class SourceBranches {

    private SourceBranches() {}

    static void battery(DeviceDraft draft, Battery battery, SourceConditions conditions) {
        boolean on = draft.network().state().sourceOn(draft.component().id(), battery);
        BatteryCondition condition =
                conditions.battery(draft.component(), battery, draft.network().state());
        source(draft, battery, condition.law());
        if (on) {
            condition.assumptions().forEach(draft.network()::assume);
        }
    }

    static void alternator(DeviceDraft draft, Alternator alternator, SourceConditions conditions) {
        boolean on = draft.network().state().sourceOn(draft.component().id(), alternator);
        AlternatorCondition condition = conditions.alternator(
                draft.component(), alternator, draft.network().state());
        source(draft, alternator, condition.law());
        if (on) {
            condition.assumptions().forEach(draft.network()::assume);
            WireEnd own = new WireEnd.AtTerminal(draft.component().id(), Device.POSITIVE);
            draft.network()
                    .sense(draft.component().id().value(), condition.sense().orElse(own), condition.setPointVolts());
        }
    }

    static void supply(DeviceDraft draft, RegulatedSupply supply) {
        source(
                draft,
                supply,
                Law.VoltageSource.regulated(supply.outputVolts(), supply.internalOhms(), supply.limitAmps()));
    }

    private static void source(DeviceDraft draft, Device device, Law law) {
        boolean on = draft.network().state().sourceOn(draft.component().id(), device);
        draft.branch(BranchKind.SOURCE, Device.NEGATIVE, Device.POSITIVE, on ? law : new Law.Open());
    }

    /**
     * The output is a regulated source, the input takes its power over the efficiency. Without isolation the two
     * negative terminals are one point.
     */
    static void converter(DeviceDraft draft, Converter converter) {
        draft.branch(
                "out",
                BranchKind.REGULATED_OUTPUT,
                Converter.OUT_NEGATIVE,
                Converter.OUT_POSITIVE,
                Law.VoltageSource.regulated(converter.outputVolts(), converter.outputOhms(), converter.limitAmps()));
        draft.branch(
                "in",
                BranchKind.REGULATED_INPUT,
                Converter.IN_POSITIVE,
                Converter.IN_NEGATIVE,
                new Law.PowerOf(new BranchId(draft.name("out")), converter.efficiencyFraction()));
        if (!converter.isolated()) {
            draft.network().join(draft.terminal(Converter.IN_NEGATIVE), draft.terminal(Converter.OUT_NEGATIVE));
        }
    }
}
