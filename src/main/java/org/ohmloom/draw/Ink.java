package org.ohmloom.draw;

/** What a colour means; a {@link DrawStyle} turns it into a colour. */
public enum Ink {
    /** The board or the sheet itself. */
    GROUND,
    /** Ground of a label laid over something else. */
    PLATE,
    /** Text and lines that must be read. */
    TEXT,
    /** Text and lines of second rank. */
    SOFT_TEXT,
    /** Fine lines: leaders, table rules, grid. */
    RULE,
    /** Frame of a sheet and heavy outlines. */
    FRAME,
    /** Body of a bundle. */
    BUNDLE,
    /** Space between the strands of a bundle that shows its wires. */
    BUNDLE_INSIDE,
    /** Inside of a component's box. */
    COMPONENT,
    /** Outline of a component's box. */
    COMPONENT_EDGE,
    /** Inside of a connector. */
    CONNECTOR,
    /** Outline of a connector. */
    CONNECTOR_EDGE,
    /** Head of a table. */
    TABLE_HEAD,
    /** A splice. */
    SPLICE,
    /** A ground point. */
    EARTH,
    /** A cool zone behind the harness. */
    ZONE_COOL,
    /** A warm zone behind the harness, from 60 deg C. */
    ZONE_WARM,
    /** A hot zone behind the harness, from 90 deg C. */
    ZONE_HOT,
    /** Outline and name of a zone. */
    ZONE_EDGE,
    /** Something to look at: a caution, an end joined to nothing. */
    CAUTION,
    /** A feed. */
    FEED,
    /** An output that is switched. */
    SWITCHED_OUTPUT,
    /** A return. */
    RETURN,
    /** A reference supply for sensors. */
    REFERENCE_SUPPLY,
    /** A reference return. */
    REFERENCE_RETURN,
    /** An analogue signal. */
    ANALOGUE_SIGNAL,
    /** A frequency or pulse signal. */
    PULSE_SIGNAL,
    /** A data bus. */
    DATA_BUS,
    /** A shield or its drain wire. */
    SHIELD,
    /** The coolest step of a scale of numbers. */
    HEAT_FIRST,
    /** Its second step. */
    HEAT_SECOND,
    /** Its third step. */
    HEAT_THIRD,
    /** Its fourth step. */
    HEAT_FOURTH,
    /** Its hottest step. */
    HEAT_FIFTH,
    /** First line of a chart. */
    CHART_FIRST,
    /** Second line of a chart. */
    CHART_SECOND,
    /** Third line of a chart. */
    CHART_THIRD,
    /** Fourth line of a chart. */
    CHART_FOURTH,
    /** Inside of a band of a chart. */
    CHART_BAND,
    /** Ground of every other stretch of time of a chart. */
    CHART_SPAN
}
