package org.ohmloom.pack;

import java.util.Arrays;
import java.util.Optional;

/** A document of the build pack. */
public enum PackDocument {
    /** The harness drawing. */
    DRAWING("drawing", "Harness drawing"),
    /** A table for each connector, and the joints outside connectors. */
    PIN_TABLES("pin-tables", "Pin tables"),
    /** What to buy. */
    BILL_OF_MATERIALS("bill-of-materials", "Bill of materials"),
    /** Every wire to be made. */
    WIRE_LIST("wire-list", "Wire list"),
    /** What a bench worker does, step by step. */
    BUILD_ORDER("build-order", "Build order"),
    /** What the finished harness must measure, with blanks for what it does. */
    TEST_SHEET("test-sheet", "Test sheet"),
    /** Findings and what the numbers rest on. */
    CALCULATION("calculation", "Findings and calculation");

    private final String id;
    private final String title;

    PackDocument(String id, String title) {
        this.id = id;
        this.title = title;
    }

    /** What the command line and file names call it. */
    public String id() {
        return id;
    }

    /** What people call it: the document type of its title block. */
    public String title() {
        return title;
    }

    /** The document of that id, if there is one. */
    public static Optional<PackDocument> find(String id) {
        return Arrays.stream(values())
                .filter(document -> document.id.equals(id.strip()))
                .findFirst();
    }
}
