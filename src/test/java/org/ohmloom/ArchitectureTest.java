package org.ohmloom;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URL;
import java.net.URLConnection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Floors, cycles and libraries: who may import whom. */
@BesideOthers
class ArchitectureTest {

    @Test
    void everyPackageLiesOnAFloorOfTheTable() {
        TreeSet<String> found = OurClasses.javaFiles(OurClasses.MAIN_SOURCES).stream()
                .map(each -> OurClasses.MAIN_SOURCES
                        .relativize(each)
                        .getParent()
                        .toString()
                        .replace('/', '.')
                        .replace('\\', '.'))
                .map(Floors::floorPackage)
                .filter(each -> !each.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(Floors.FLOOR_OF.keySet()), found);
    }

    @Test
    void aPackageImportsOnlyFromTheFloorsAboveItInTheTable() {
        classes()
                .should(onlyImport("what its floor allows", ArchitectureTest::floorObjection))
                .check(OurClasses.MAIN);
    }

    @Test
    void aLibraryIsImportedOnlyWhereTheTableAllowsIt() {
        classes()
                .should(onlyImport("libraries its package may use", ArchitectureTest::libraryObjection))
                .check(OurClasses.MAIN);
    }

    @Test
    void noPackagesDependOnEachOtherInACircle() {
        slices().matching("org.ohmloom.(**)").should().beFreeOfCycles().check(OurClasses.MAIN);
    }

    @Test
    void nothingSpeaksToTheNetwork() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.net.http..", "javax.net..", "java.rmi..")
                .orShould()
                .dependOnClassesThat(belongToAnyOf(
                        Socket.class, ServerSocket.class, DatagramSocket.class, URLConnection.class, InetAddress.class))
                .orShould()
                .callMethod(URL.class, "openStream")
                .check(OurClasses.MAIN);
    }

    @Test
    void theTableSaysNoWhereItShould() {
        assertTrue(Floors.mayImport("solve", "graph"));
        assertTrue(Floors.mayImport("model", "units"));
        assertFalse(Floors.mayImport("units", "model"));
        assertFalse(Floors.mayImport("graph", "solve"));
        assertFalse(Floors.mayImport("heat", "solve"));
        assertFalse(Floors.mayImport("pack", "workbench"));
        assertTrue(libraryObjection("draw", "javax.swing.JComponent").isPresent());
        assertTrue(libraryObjection("solve", "org.jgrapht.Graph").isPresent());
        assertTrue(libraryObjection("solve", "org.example.unlisted.Thing").isPresent());
        assertFalse(libraryObjection("draw", "java.awt.Graphics2D").isPresent());
    }

    private static Optional<String> floorObjection(Dependency dependency) {
        String target = dependency.getTargetClass().getBaseComponentType().getPackageName();
        if (!target.startsWith(Floors.ROOT)) {
            return Optional.empty();
        }
        String from = Floors.floorPackage(dependency.getOriginClass().getPackageName());
        String to = Floors.floorPackage(target);
        return Floors.mayImport(from, to)
                ? Optional.empty()
                : Optional.of(String.format(
                        "%s (floor %d) may not import %s (floor %d)",
                        from, Floors.floorOf(from), to, Floors.floorOf(to)));
    }

    private static Optional<String> libraryObjection(Dependency dependency) {
        return libraryObjection(
                Floors.floorPackage(dependency.getOriginClass().getPackageName()),
                dependency.getTargetClass().getBaseComponentType().getName());
    }

    private static Optional<String> libraryObjection(String from, String target) {
        for (Floors.Library library : Floors.LIBRARIES) {
            if (library.packages().stream().anyMatch(each -> target.startsWith(each + "."))) {
                return library.allowedIn().contains(from)
                        ? Optional.empty()
                        : Optional.of(library.name() + " may be imported only in " + library.allowedIn());
            }
        }
        boolean known = !target.contains(".")
                || List.of("java.", "javax.xml.", Floors.ROOT + ".").stream().anyMatch(target::startsWith);
        return known ? Optional.empty() : Optional.of("not a library of the table");
    }

    private static ArchCondition<JavaClass> onlyImport(
            String what, Function<Dependency, Optional<String>> objectionTo) {
        return new ArchCondition<>("import only " + what) {
            @Override
            public void check(JavaClass item, ConditionEvents events) {
                for (Dependency each : item.getDirectDependenciesFromSelf()) {
                    objectionTo
                            .apply(each)
                            .ifPresent(objection -> events.add(
                                    SimpleConditionEvent.violated(each, objection + ": " + each.getDescription())));
                }
            }
        };
    }
}
