package org.ohmloom.pack;

import java.util.Arrays;
import java.util.Optional;

/** A document of the build pack. */
public enum PackDocument {
    /** What the pack is, what belongs to it, and what is still open. */
    COVER("cover", "Cover", "what the pack is, its revisions, totals and open findings"),
    /** The harness drawing. */
    DRAWING("drawing", "Harness drawing", "the harness with its lengths, connectors, splices, grounds and coverings"),
    /** The wiring diagram, circuit by circuit. */
    WIRING_DIAGRAM(
            "wiring-diagram",
            "Wiring diagram",
            "every circuit from source to load to return, its wires with size and current"),
    /** The harness at 1:1 to build on. */
    FORM_BOARD("form-board", "Form board", "the harness at 1:1, on tiles to join on a board"),
    /** A table for each connector, and the joints outside connectors. */
    PIN_TABLES("pin-tables", "Pin tables", "what is in each cavity, splice and terminal"),
    /** What to buy. */
    BILL_OF_MATERIALS("bill-of-materials", "Bill of materials", "what to buy"),
    /** Every wire to be made, in the order of cutting. */
    WIRE_LIST("wire-list", "Wire and cut list", "every wire to be made, in the order of cutting"),
    /** Cross-sections, coverings, supports and markings. */
    BUNDLES("bundles", "Bundles and coverings", "cross-sections, coverings, supports and markings"),
    /** What a bench worker does, step by step. */
    BUILD_ORDER("build-order", "Build order", "what the bench does, step by step"),
    /** What the finished harness must measure, with blanks for what it does. */
    TEST_SHEET("test-sheet", "Test sheet", "what the finished harness must measure, with room to write"),
    /** Labels for wires, connectors and branches. */
    LABELS("labels", "Labels", "text and size of every label, and sheets of them true to size"),
    /** Channels, and the pins of each unit. */
    CHANNELS(
            "channel-sheet",
            "Channels and pins",
            "every channel with its sensor, rate, colours and set-up; every pin of each unit"),
    /** Calibration of each channel. */
    CALIBRATION("calibration-sheet", "Calibrations", "the curve of each channel, with its points"),
    /** Data buses. */
    BUS("bus-sheet", "Data buses", "wiring, terminations and messages of each data bus, with load and response times"),
    /** How the assemblies go into the vehicle. */
    INSTALLATION(
            "installation-sheet",
            "Installation sheet",
            "where the assemblies lie, grounds, the order of mating, fasteners"),
    /** Findings and what the numbers rest on. */
    CALCULATION("calculation", "Findings and calculation", "findings, numbers, and what they rest on");

    private final String id;
    private final String title;
    private final String content;

    PackDocument(String id, String title, String content) {
        this.id = id;
        this.title = title;
        this.content = content;
    }

    /** What the command line and file names call it. */
    public String id() {
        return id;
    }

    /** What people call it: the document type of its title block. */
    public String title() {
        return title;
    }

    /** Whether it is about one assembly as well as about the whole harness: what a bench builds, not what a vehicle does. */
    public boolean isOfAssembly() {
        return switch (this) {
            case CALCULATION, INSTALLATION, CHANNELS, CALIBRATION, BUS -> false;
            default -> true;
        };
    }

    /** What is in it, for the list of contents. */
    public String content() {
        return content;
    }

    /** The document of that id, if there is one. */
    public static Optional<PackDocument> find(String id) {
        return Arrays.stream(values())
                .filter(document -> document.id.equals(id.strip()))
                .findFirst();
    }
}
