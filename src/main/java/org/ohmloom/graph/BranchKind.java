package org.ohmloom.graph;

/** What a branch of the electrical network is made of. */
public enum BranchKind {
    /** A wire of any class but shield. */
    WIRE(Part.CONDUCTOR),
    /** A shield or its drain wire. */
    SHIELD(Part.CONDUCTOR),
    /** A mated contact pair with its crimp. */
    CONTACT(Part.CONTACT),
    /** The joint of a wire in a splice, on a bus bar, on a ground point, or of a case on a ground point. */
    JOINT(Part.CONTACT),
    /** A stretch of a chassis body. */
    CHASSIS(Part.CONDUCTOR),
    /** A bonding strap. */
    STRAP(Part.CONDUCTOR),
    /** A conductor inside a device: ground to sensor return, common return of a converter. */
    INTERNAL(Part.CONDUCTOR),
    FUSE(Part.DEVICE),
    BREAKER(Part.DEVICE),
    SWITCH(Part.DEVICE),
    RELAY_CONTACT(Part.DEVICE),
    SOLID_STATE_OUTPUT(Part.DEVICE),
    /** Output pin of a control unit. */
    OUTPUT_PIN(Part.DEVICE),
    DIODE(Part.DEVICE),
    /** Diode a load's current flows on through while its output is off. */
    FREEWHEEL_DIODE(Part.BYPASS),
    /** Active clamp of an output. */
    CLAMP(Part.BYPASS),
    /** Capacitor on the supply of an output. */
    SUPPLY_CAPACITOR(Part.BYPASS),
    /** Battery, alternator, charger, bench supply. */
    SOURCE(Part.SOURCE),
    /** Output of a converter or a reference supply of a control unit, or a pull-up. */
    REGULATED_OUTPUT(Part.SOURCE),
    /** What a converter or a reference supply takes in for its output. */
    REGULATED_INPUT(Part.LOAD),
    LOAD(Part.LOAD),
    RELAY_COIL(Part.LOAD),
    SENSOR(Part.LOAD),
    /** A control unit's own draw. */
    CONTROL_UNIT(Part.LOAD),
    /** Present current of equipment that is not modelled. */
    PRESENT_LOAD(Part.LOAD);

    /** The parts a branch can play in a circuit. */
    public enum Part {
        CONDUCTOR,
        CONTACT,
        DEVICE,
        /** Leads current past a load or an output, and only while something switches. */
        BYPASS,
        SOURCE,
        LOAD
    }

    private final Part part;

    BranchKind(Part part) {
        this.part = part;
    }

    /** The part it plays in a circuit. */
    public Part part() {
        return part;
    }

    /** Whether current passes through it on its way: a conductor, contact or device. */
    public boolean isPassage() {
        return part == Part.CONDUCTOR || part == Part.CONTACT || part == Part.DEVICE;
    }
}
