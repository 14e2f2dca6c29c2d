package org.ohmloom.model;

/** What a wire carries; decides its colour on drawings, never its insulation. */
public enum SignalClass {
    FEED,
    SWITCHED_OUTPUT,
    RETURN,
    REFERENCE_SUPPLY,
    REFERENCE_RETURN,
    ANALOGUE_SIGNAL,
    PULSE_SIGNAL,
    DATA_BUS,
    SHIELD
}
