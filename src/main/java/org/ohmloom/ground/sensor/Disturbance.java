package org.ohmloom.ground.sensor;

import java.util.List;
import java.util.Locale;
import org.ohmloom.words.Text;

/** What disturbs a reading, in the order its errors are told: each is what it adds to those before it. */
enum Disturbance {
    REFERENCE("Ohm's law; algebra of the line"),
    FEED("Ohm's law; algebra of the ratiometric line"),
    OWN_RETURN("Ohm's law; algebra of the line"),
    OTHER_RETURN("common-impedance coupling, MIL-HDBK-419A Vol I (1987) 6.2.2.1 (from memory); algebra of the line"),
    LEADS("Ohm's law; voltage divider"),
    LOAD("voltage divider"),
    HEAT("power over the dissipation constant, textbook (from memory)"),
    JOINT("law of intermediate metals; E(T) by NIST Monograph 175, ITS-90 type K (coefficients from memory)"),
    COLD_JUNCTION("E(T) by NIST Monograph 175, ITS-90 type K (coefficients from memory)");

    private final String source;

    Disturbance(String source) {
        this.source = source;
    }

    /** What it is called, as {@code feed droop}. */
    Text words() {
        return ReadingTexts.text(
                "disturbance." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
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
