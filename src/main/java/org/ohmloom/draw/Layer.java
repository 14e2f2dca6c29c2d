package org.ohmloom.draw;

/** Layers of a scene, lowest first. */
public enum Layer {
    /** Zones behind the harness. */
    ZONES,
    /** Bundle segments and their coverings. */
    BUNDLES,
    /** Single wires. */
    WIRES,
    /** Connectors, components, splices, ground points and breakouts. */
    CONNECTORS,
    /** Lengths, currents, drops, temperatures and sizes. */
    NUMBERS,
    /** Frame, title block, tables and notes of a sheet. */
    SHEET
}
