package org.ohmloom.analysis.start;

/** What a first harness is for, and so which body of practice judges it and where its returns meet. */
public enum StartCraft {
    /** A road vehicle or a trailer: returns meet on the frame. */
    ROAD_VEHICLE("road-vehicle", "ISO 6722-1 class C", true),
    /** A boat: returns meet on a bus bar, never on the hull. */
    SMALL_CRAFT("abyc-e-11", "105C", false),
    /** A machine: judged as a road vehicle, its returns meet on the frame. */
    MACHINE("road-vehicle", "ISO 6722-1 class C", true);

    private final String basis;
    private final String insulation;
    private final boolean onFrame;

    StartCraft(String basis, String insulation, boolean onFrame) {
        this.basis = basis;
        this.insulation = insulation;
        this.onFrame = onFrame;
    }

    /** Id of the design basis in the tables. */
    String basis() {
        return basis;
    }

    /** Id of the insulation type in the tables. */
    String insulation() {
        return insulation;
    }

    /** Whether returns meet on a ground point of the frame instead of a bus bar. */
    boolean onFrame() {
        return onFrame;
    }
}
