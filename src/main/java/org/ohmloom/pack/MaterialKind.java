package org.ohmloom.pack;

/** The groups of a bill of materials, in its order. */
enum MaterialKind {
    HOUSING("Connector housings, locks and backshells"),
    CONTACT("Contacts, one for each cavity in use"),
    SEAL("Wire seals"),
    PLUG("Cavity plugs"),
    SPLICE("Splices"),
    TERMINAL("Wire terminals on studs and screws"),
    GROUND("Ground points and straps"),
    PROTECTION("Protective devices"),
    CABLE("Cables"),
    WIRE("Wire"),
    COVERING("Coverings"),
    LABEL("Labels"),
    FIXING("Supports and ties"),
    EQUIPMENT("Equipment"),
    TOOL("Tools, not used up");

    private final String words;

    MaterialKind(String words) {
        this.words = words;
    }

    /** What people call it. */
    String words() {
        return words;
    }
}
