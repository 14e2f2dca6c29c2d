package org.ohmloom;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The table of floors as the tests hold it: which package lies on which floor, which neighbours may be seen and why,
 * and which library may be imported where. Change the table here and in the package's own first sentence together.
 */
final class Floors {
    /** The package all others lie in. */
    static final String ROOT = "org.ohmloom";

    /** The launcher's own package lies above every floor. */
    static final int LAUNCHER_FLOOR = 9;

    /** Floor number of each package, in table order. */
    static final Map<String, Integer> FLOOR_OF = floors();

    /** A package that may import a neighbour on its own floor, with the reason. */
    record Neighbour(String from, String to, String reason) {}

    /** A library that may be imported in some packages only. */
    record Library(String name, List<String> packages, Set<String> allowedIn) {}

    /** The only imports allowed between packages of one floor. */
    static final List<Neighbour> NEIGHBOURS = List.of(
            new Neighbour("model", "units", "the harness is written in quantities"),
            new Neighbour("model", "words", "a constructor says what it refuses in any language"),
            new Neighbour("units", "words", "what is no quantity is said in any language"),
            new Neighbour("analysis", "review", "an analysis runs the rules and carries their findings"),
            new Neighbour("remedy", "analysis", "a remedy is tried by analysing the changed copy"),
            new Neighbour("remedy", "review", "a remedy reports which findings it removes and adds"),
            new Neighbour("cli", "workbench", "the open command starts the workbench"));

    /** The column "only places that may import". Libraries missing here may be imported nowhere. */
    static final List<Library> LIBRARIES = List.of(
            new Library("commons-csv", List.of("org.apache.commons.csv"), Set.of("tables", "store", "pack")),
            new Library("Jackson", List.of("com.fasterxml.jackson"), Set.of("store")),
            new Library("JGraphT", List.of("org.jgrapht"), Set.of("graph", "signal")),
            new Library("EJML", List.of("org.ejml"), Set.of("solve")),
            new Library(
                    "PDFBox", List.of("org.apache.pdfbox", "org.apache.fontbox", "de.rototor.pdfbox"), Set.of("pack")),
            new Library("commonmark", List.of("org.commonmark"), Set.of("manual")),
            new Library("fastexcel", List.of("org.dhatim"), Set.of("pack")),
            new Library("picocli", List.of("picocli"), Set.of("cli")),
            new Library("FlatLaf", List.of("com.formdev.flatlaf"), Set.of("workbench")),
            new Library("MigLayout", List.of("net.miginfocom"), Set.of("workbench")),
            new Library("Swing", List.of("javax.swing", "javax.accessibility"), Set.of("workbench")),
            new Library(
                    "AWT",
                    List.of("java.awt", "javax.imageio", "javax.print"),
                    Set.of("draw", "pack", "workbench", "cli")),
            new Library("preferences", List.of("java.util.prefs"), Set.of("workbench")),
            new Library("JSpecify", List.of("org.jspecify"), allPackages()));

    private Floors() {}

    /** The floor package a class lies in: "model" for org.ohmloom.model and its sub-packages, "" for the launcher. */
    static String floorPackage(String packageName) {
        if (!packageName.startsWith(ROOT + ".")) {
            return "";
        }
        String rest = packageName.substring(ROOT.length() + 1);
        int dot = rest.indexOf('.');
        return dot < 0 ? rest : rest.substring(0, dot);
    }

    /** The floor of a floor package; the launcher's for "". Fails for a package the table does not have. */
    static int floorOf(String floorPackage) {
        if (floorPackage.isEmpty()) {
            return LAUNCHER_FLOOR;
        }
        Integer floor = FLOOR_OF.get(floorPackage);
        if (floor == null) {
            throw new AssertionError("package " + ROOT + "." + floorPackage + " is not in the table of floors");
        }
        return floor;
    }

    /** Whether one floor package may import another. */
    static boolean mayImport(String from, String to) {
        return from.equals(to)
                || floorOf(to) < floorOf(from)
                || NEIGHBOURS.stream()
                        .anyMatch(each -> each.from().equals(from) && each.to().equals(to));
    }

    private static Map<String, Integer> floors() {
        Map<String, Integer> floors = new LinkedHashMap<>();
        put(floors, 0, "units", "words", "model");
        put(floors, 1, "tables", "edit", "store");
        put(floors, 2, "graph");
        put(floors, 3, "solve", "bundle", "heat");
        put(floors, 4, "size", "ground", "signal", "bench");
        put(floors, 5, "review", "analysis", "remedy");
        put(floors, 6, "draw");
        put(floors, 7, "pack", "manual");
        put(floors, 8, "workbench", "cli");
        return Collections.unmodifiableMap(floors);
    }

    private static void put(Map<String, Integer> floors, int floor, String... packages) {
        for (String each : packages) {
            floors.put(each, floor);
        }
    }

    private static Set<String> allPackages() {
        Set<String> all = new TreeSet<>(floors().keySet());
        all.add("");
        return all;
    }
}
