package org.ohmloom.ground.sensor;

import java.util.List;

/** What disturbs a reading, in the order its errors are told: each is what it adds to those before it. */
enum Disturbance {
    REFERENCE("reference supply", "Ohm's law; algebra of the line"),
    FEED("feed droop", "Ohm's law; algebra of the ratiometric line"),
    OWN_RETURN("own current in the return", "Ohm's law; algebra of the line"),
    OTHER_RETURN(
            SensorBudget.RETURN_OFFSET,
            "common-impedance coupling, MIL-HDBK-419A Vol I (1987) 6.2.2.1 (from memory); algebra of the line"),
    LEADS("lead resistance", "Ohm's law; voltage divider"),
    LOAD("load of the input", "voltage divider"),
    HEAT("self-heating", "power over the dissipation constant, textbook (from memory)"),
    JOINT(
            "extension wires",
            "law of intermediate metals; E(T) by NIST Monograph 175, ITS-90 type K (coefficients from memory)"),
    COLD_JUNCTION("cold junction", "E(T) by NIST Monograph 175, ITS-90 type K (coefficients from memory)");

    private final String words;
    private final String source;

    Disturbance(String words, String source) {
        this.words = words;
        this.source = source;
    }

    String words() {
        return words;
    }

    String source() {
        return source;
    }

    static List<Disturbance> inOrder() {
        return List.of(values());
    }

    /** The conditions with this one as it is, out of the actual ones. */
    Conditions bring(Conditions sofar, Conditions actual, double referenceVolts) {
        return switch (this) {
            case REFERENCE -> sofar.withReference(actual.referenceVolts(), referenceVolts);
            case FEED -> sofar.withReference(sofar.referenceVolts(), actual.supplyVolts());
            case OWN_RETURN -> sofar.withOwnReturnVolts(actual.ownReturnVolts());
            case OTHER_RETURN -> sofar.withOtherReturnVolts(actual.otherReturnVolts());
            case LEADS -> sofar.withLeads(actual.leadOhms(), actual.returnOhms());
            case LOAD -> sofar.withInputSiemens(actual.inputSiemens());
            case HEAT -> sofar.withHeat(actual.heated());
            case JOINT -> sofar.withJoints(actual.jointCelsius(), sofar.coldJunction());
            case COLD_JUNCTION -> sofar.withJoints(sofar.jointCelsius(), actual.coldJunction());
        };
    }
}
