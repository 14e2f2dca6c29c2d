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
    CROWDED_STUD("stud with too many terminals"),
    FAST_EDGE("output with too fast an edge beside a signal"),
    BUS_GROUNDS_APART("bus node grounded too far from the others"),
    UNIT_LIFTED("control unit lifted off its ground"),
    UNSAFE_LOSS("ground whose loss sends its current through sensor return pins"),
    SENDER_ON_ENGINE("one-wire sender on an engine with a poor strap"),
    STARVED_TRANSMITTER("corroded contact in a current loop"),
    WARM_JOINT("thermocouple going on in copper from a joint at another temperature");

    private final String words;

    FaultKind(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
