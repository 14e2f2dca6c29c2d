package org.ohmloom.judged;

/** Kinds of fault that are put into generated harnesses. */
enum FaultKind {
    POOR_JOINT("poor ground joint"),
    THIN_STRAP("undersized strap"),
    FAR_GROUND("control unit grounded far away"),
    LOAD_ON_SENSOR_RETURN("load spliced into a sensor's return"),
    SENSOR_ON_LOAD_RETURN("sensor spliced into the long return of a load"),
    CORRODED_CONTACT("corroded contact in a sensor's lead"),
    SECOND_PATH("second path to the chassis through a shield or a sensor's return"),
    CROWDED_STUD("stud with too many terminals");

    private final String words;

    FaultKind(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
