package org.ohmloom.model;

/** A thing in a harness that has an identity of its own. */
public sealed interface Element
        permits Assembly,
                Breakout,
                BundleSegment,
                Cable,
                ChassisBody,
                Component,
                Connector,
                ContactPart,
                DataBus,
                GroundPoint,
                LoadGroup,
                Note,
                OperatingState,
                Part,
                Reading,
                Splice,
                StateSequence,
                Strap,
                Waiver,
                Wire,
                Zone {

    /** Identity, unique in the harness. */
    ElementId id();
}
