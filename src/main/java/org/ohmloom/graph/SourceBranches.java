package org.ohmloom.graph;

import org.ohmloom.model.Alternator;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Converter;
import org.ohmloom.model.Device;
import org.ohmloom.model.RegulatedSupply;

/** Branches of what gives power: batteries, alternators, regulated supplies and converters. */
final class SourceBranches {

    private SourceBranches() {}

    static void battery(DeviceDraft draft, Battery battery) {
        source(draft, battery, Law.VoltageSource.battery(battery.emfVolts(), battery.internalOhms()));
    }

    static void alternator(DeviceDraft draft, Alternator alternator) {
        source(
                draft,
                alternator,
                Law.VoltageSource.regulated(
                        alternator.setPointVolts(), alternator.internalOhms(), alternator.limitAmps()));
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
