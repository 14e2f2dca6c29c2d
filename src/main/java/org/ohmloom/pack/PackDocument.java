package org.ohmloom.pack;

import java.util.Arrays;
import java.util.Optional;
import org.ohmloom.words.Constants;

/** A document of the build pack. */
public enum PackDocument {
    /** What the pack is, what belongs to it, and what is still open. */
    COVER("cover", "what the pack is, its revisions, totals and open findings"),
    /** The harness drawing. */
    DRAWING("drawing", "the harness with its lengths, connectors, splices, grounds and coverings"),
    /** The wiring diagram, circuit by circuit. */
    WIRING_DIAGRAM("wiring-diagram", "every circuit from source to load to return, its wires with size and current"),
    /** The harness at 1:1 to build on. */
    FORM_BOARD("form-board", "the harness at 1:1, on tiles to join on a board"),
    /** A table for each connector, and the joints outside connectors. */
    PIN_TABLES("pin-tables", "what is in each cavity, splice and terminal"),
    /** What to buy. */
    BILL_OF_MATERIALS("bill-of-materials", "what to buy"),
    /** Every wire to be made, in the order of cutting. */
    WIRE_LIST("wire-list", "every wire to be made, in the order of cutting"),
    /** Cross-sections, coverings, supports and markings. */
    BUNDLES("bundles", "cross-sections, coverings, supports and markings"),
    /** What a bench worker does, step by step. */
    BUILD_ORDER("build-order", "what the bench does, step by step"),
    /** What the finished harness must measure, with blanks for what it does. */
    TEST_SHEET("test-sheet", "what the finished harness must measure, with room to write"),
    /** Labels for wires, connectors and branches. */
    LABELS("labels", "text and size of every label, and sheets of them true to size"),
    /** Channels, and the pins of each unit. */
    CHANNELS("channel-sheet", "every channel with its sensor, rate, colours and set-up; every pin of each unit"),
    /** Calibration of each channel. */
    CALIBRATION("calibration-sheet", "the curve of each channel, with its points"),
    /** Data buses. */
    BUS("bus-sheet", "wiring, terminations and messages of each data bus, with load and response times"),
    /** How the assemblies go into the vehicle. */
    INSTALLATION("installation-sheet", "where the assemblies lie, grounds, the order of mating, fasteners"),
    /** Findings and what the numbers rest on. */
    CALCULATION("calculation", "findings, numbers, and what they rest on");

    private final String id;
    private final String content;

    PackDocument(String id, String content) {
        this.id = id;
        this.content = content;
    }

    /** What the command line and file names call it. */
    public String id() {
        return id;
    }

    /** What people call it, in English: the document type of its title block. */
    public String title() {
        return Constants.text(this).english();
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
