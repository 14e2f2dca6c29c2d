package org.ohmloom.pack;

import org.ohmloom.words.Constants;

/** The groups of a bill of materials, in its order. */
enum MaterialKind {
    HOUSING,
    CONTACT,
    SEAL,
    PLUG,
    SPLICE,
    TERMINAL,
    GROUND,
    PROTECTION,
    CABLE,
    WIRE,
    COVERING,
    LABEL,
    FIXING,
    EQUIPMENT,
    TOOL;

    /** What people call it, in English. */
    String words() {
        return Constants.text(this).english();
    }
}
