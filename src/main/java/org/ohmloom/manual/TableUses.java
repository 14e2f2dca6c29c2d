package org.ohmloom.manual;

import java.util.Map;

/** What each kind of table is used for, a sentence or two. */
final class TableUses {

    private static final Map<String, String> BY_KIND = Map.ofEntries(
            Map.entry(
                    "adiabatic-k",
                    "The factor of the short-circuit equation by insulation, where no two temperatures are known."),
            Map.entry("altitude", "The factor on what a wire may carry at an altitude, for the bases that ask for it."),
            Map.entry("ambient", "The factor on an ampacity by the temperature of the air along the wire."),
            Map.entry(
                    "ampacity",
                    "What a single conductor of a size may carry for good, by the temperature its insulation stands."),
            Map.entry(
                    "battery-acceptance",
                    "What a battery takes when it is charged, by its charge level or temperature."),
            Map.entry("battery-open-circuit", "The voltage of a battery without current, by its charge level."),
            Map.entry(
                    "battery-resistance",
                    "The inner resistance of a battery, by charge level, temperature or length of a pulse."),
            Map.entry("battery-types", "The types of battery and what holds for all of a type."),
            Map.entry("bench-test", "Limits of the tests on the finished harness."),
            Map.entry("breakers", "Types of circuit breaker: ratings, trip bands and what they interrupt."),
            Map.entry("build-times", "Minutes for each operation of building, for the build order."),
            Map.entry("bundle", "The factor on an ampacity by how many loaded conductors lie together."),
            Map.entry("bus-figures", "Figures a data bus is worked out with: terminations, drivers, receivers."),
            Map.entry("bus-limits", "How long a data bus may be and what may hang on it, by bit rate."),
            Map.entry("change-times", "How fast what a sensor measures changes, for how often it must be read."),
            Map.entry("colours", "Letters of wire colours, as they are typed in the list of wires and drawn."),
            Map.entry("conductors", "Resistance, copper area and outside diameter of the sizes of a conductor family."),
            Map.entry(
                    "copper", "Constants of copper that every resistance, mass and short circuit is worked out with."),
            Map.entry(
                    "covering-sizes",
                    "Coverings as they are bought, with the bundles each size takes and the temperature it stands."),
            Map.entry("coverings", "How a covering hinders heat on its way out of a bundle."),
            Map.entry(
                    "design-bases",
                    "Bodies of published practice a harness can be judged by, and which tables each uses."),
            Map.entry("device-rating", "How large a protective device may be for its conductor, by design basis."),
            Map.entry("drop", "How much voltage a load may lose, by use and system voltage."),
            Map.entry(
                    "fault-conditions", "How cold, hot and charged things are in the smallest and the largest fault."),
            Map.entry(
                    "fuse-ambient", "The share of its rating a fuse carries, by the temperature of the air around it."),
            Map.entry("fuse-breaking", "The largest fault current a type of fuse interrupts."),
            Map.entry("fuse-derating", "The share of its rating a fuse may carry for good."),
            Map.entry("fuse-ratings", "The ratings there are of a type of fuse, and the voltage it is made for."),
            Map.entry("fuse-resistances", "Cold resistance of fuses, which takes its part of the drop."),
            Map.entry(
                    "fuse-times",
                    "Shortest and longest opening times by multiples of the rating: the longest protects a wire, the shortest rides"
                            + " through a start. Nothing is read between two rows."),
            Map.entry("ground-limits", "How far a ground may be from its reference."),
            Map.entry("inrush", "How much more a kind of load draws when it is switched on, where nothing is entered."),
            Map.entry("insulation", "Temperatures that insulation types stand, and their heat conductivity."),
            Map.entry("label-sizes", "Labels by form and size, for the choice of labels."),
            Map.entry("length-tolerances", "Tolerances of cut lengths, for the wire list and the form board."),
            Map.entry("tolerance-spreads", "Spreads of parts, loads and air, for the study of tolerances."),
            Map.entry("mechanical", "The smallest conductor a design basis allows, whatever it carries."),
            Map.entry(
                    "outside-diameters",
                    "Outside diameters of wires whose family lists none, for the diameter of bundles."),
            Map.entry("placement", "How far from its source a protective device may sit, by design basis."),
            Map.entry(
                    "practice",
                    "Figures of how harnesses are made; the view Fabrication shows each beside what is entered."),
            Map.entry("protector", "The largest breaker and fuse for a wire, by its size."),
            Map.entry("pull-force", "Least force a crimp must stand, for the build order and the test sheet."),
            Map.entry("reference", "Held for people to look up; nothing is computed from it."),
            Map.entry("short-time", "The temperature an insulation stands for the moments of a short circuit."),
            Map.entry(
                    "starting-profiles",
                    "Voltage of a supply while an engine starts, that control units are made to stand."),
            Map.entry("supply-codes", "Voltages between which a control unit of a code works."),
            Map.entry("switch", "How much larger a switch must be rated than what it switches, by kind of load."),
            Map.entry("terminals", "Meanings of terminal numbers of road vehicle equipment."),
            Map.entry("tie-spacing", "How far apart ties stand, by the diameter of the bundle."),
            Map.entry("workmanship", "Classes of workmanship a shop can be asked for."));

    private TableUses() {}

    /**
     * What a kind of table is used for.
     *
     * @throws IllegalArgumentException for a kind nobody has said it of
     */
    static String of(String kind) {
        String use = BY_KIND.get(kind);
        if (use == null) {
            throw new IllegalArgumentException("nothing says what tables of kind '" + kind + "' are used for");
        }
        return use;
    }
}
