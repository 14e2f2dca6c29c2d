package org.ohmloom.workbench.inspect;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Sensor;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.units.FieldUnits;
import org.ohmloom.workbench.desk.Examples;
import org.ohmloom.workbench.desk.Readout;

/** What the inspector writes is for people: no text of the program's own, every number with its unit. */
class InspectorFieldsTest {

    /** What a value looks like that nobody has put into words: Optional.empty, Name[field=value], a list, a class name. */
    private static final Pattern RAW =
            Pattern.compile("Optional|\\w\\[|^\\[|^\\{|\\.empty|\\bnull\\b|@[0-9a-f]{4,}|org\\.ohmloom|NaN|Infinity");

    /** Numbers without a unit: counts, constants of a curve, numbers in the unit their sensor measures in. */
    private static final Set<String> PLAIN = Set.of(
            "pulledCount",
            "gainRatio",
            "turnsRatio",
            "unitPrice",
            "a",
            "allowedError",
            "b",
            "c",
            "changed",
            "count",
            "end",
            "error",
            "falling",
            "highest",
            "lowest",
            "outputs",
            "peukertExponent",
            "rising",
            "start",
            "value");

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "rescue-pickup", "workboat", "faults", "star-ground"})
    void noFieldOfAnyElementShowsTextOfTheProgram(String example) throws HarnessFileException {
        Harness harness = Examples.open(example).harness();
        Inspector inspector = new Inspector(new Readout(harness, Optional.empty(), Optional.empty()));
        Set<String> raw = new TreeSet<>();
        for (Element element : harness.elements().toList()) {
            texts(inspector.of(element.id().value()).orElseThrow()).stream()
                    .filter(text -> RAW.matcher(text).find())
                    .forEach(text -> raw.add(element.id() + ": " + text));
        }
        texts(HarnessSummary.of(new Readout(harness, Optional.empty(), Optional.empty()))).stream()
                .filter(text -> RAW.matcher(text).find())
                .forEach(raw::add);
        assertEquals(Set.of(), raw);
    }

    private static List<String> texts(Inspection shown) {
        List<String> texts = new ArrayList<>(List.of(shown.title(), shown.subtitle()));
        for (Inspection.Section section : shown.sections()) {
            texts.add(section.title());
            if (section instanceof Inspection.Facts facts) {
                facts.facts().forEach(fact -> texts.addAll(List.of(fact.label(), fact.value())));
            }
            if (section instanceof Inspection.Grid grid) {
                texts.addAll(grid.heads());
                grid.rows().forEach(texts::addAll);
            }
        }
        return texts;
    }

    @Test
    void everyNumberOfTheModelHasAUnitOrIsPlain() {
        Set<String> without = new TreeSet<>();
        for (Class<?> type : recordsOf(Element.class)) {
            for (RecordComponent field : type.getRecordComponents()) {
                boolean number = field.getType() == double.class || field.getType() == OptionalDouble.class;
                if (number && FieldUnits.text(field.getName(), 1).isEmpty() && !PLAIN.contains(field.getName())) {
                    without.add(type.getSimpleName() + "." + field.getName());
                }
            }
        }
        assertEquals(Set.of(), without);
    }

    @ParameterizedTest
    @ValueSource(strings = {"rescue-pickup", "workboat", "faults"})
    void everyFieldThatWasEnteredIsExplained(String example) throws HarnessFileException {
        Harness harness = Examples.open(example).harness();
        Inspector inspector = new Inspector(new Readout(harness, Optional.empty(), Optional.empty()));
        Set<String> bare = new TreeSet<>();
        for (Element element : harness.elements().toList()) {
            inspector.of(element.id().value()).orElseThrow().sections().stream()
                    .filter(section -> section instanceof Inspection.Facts facts && facts.entered())
                    .flatMap(section -> ((Inspection.Facts) section).facts().stream())
                    .filter(fact -> fact.about().isBlank())
                    .forEach(fact -> bare.add(element.getClass().getSimpleName() + ": " + fact.label()));
        }
        assertEquals(Set.of(), bare);
    }

    @Test
    void everyExplanationIsOfAFieldOfTheModel() {
        Set<String> fields = new TreeSet<>();
        for (Class<?> type : recordsOf(Element.class)) {
            for (RecordComponent field : type.getRecordComponents()) {
                fields.add("help." + kebab(type.getSimpleName()) + "." + kebab(field.getName()));
            }
        }
        Set<String> told = new TreeSet<>(ResourceBundle.getBundle("org.ohmloom.workbench.words.field-help")
                .keySet());
        told.removeAll(fields);
        assertEquals(Set.of(), told);
    }

    private static String kebab(String name) {
        return name.replaceAll("(\\p{Lower}|\\d)(\\p{Upper})", "$1-$2").toLowerCase(Locale.ROOT);
    }

    /** All records of the model that hang on a sealed type, found by what their fields hold. */
    private static Set<Class<?>> recordsOf(Class<?> root) {
        Set<Class<?>> seen = new LinkedHashSet<>();
        Deque<Class<?>> waiting = new ArrayDeque<>(List.of(root));
        while (!waiting.isEmpty()) {
            Class<?> type = waiting.remove();
            if (!type.getPackageName().equals("org.ohmloom.model") || !seen.add(type)) {
                continue;
            }
            if (type.isSealed()) {
                waiting.addAll(List.of(type.getPermittedSubclasses()));
            }
            if (type.isRecord()) {
                for (RecordComponent field : type.getRecordComponents()) {
                    classes(field.getGenericType(), waiting);
                }
            }
        }
        seen.removeIf(type -> !type.isRecord());
        assertTrue(seen.size() > 40, "the model has more records than " + seen.size());
        return seen;
    }

    private static void classes(Type type, Deque<Class<?>> found) {
        if (type instanceof Class<?> plain) {
            found.add(plain);
        } else if (type instanceof ParameterizedType generic) {
            for (Type argument : generic.getActualTypeArguments()) {
                classes(argument, found);
            }
        }
    }

    @Test
    void aSensorTellsTheKindOfItsCalibration() throws HarnessFileException {
        Harness harness = Examples.open("faults").harness();
        Inspector inspector = new Inspector(new Readout(harness, Optional.empty(), Optional.empty()));
        List<Inspection.Fact> calibrations = harness.components().all().stream()
                .filter(component -> component.device() instanceof Sensor sensor
                        && sensor.measurement().isPresent())
                .flatMap(component -> inspector.of(component.id().value()).orElseThrow().sections().stream())
                .filter(Inspection.Facts.class::isInstance)
                .flatMap(section -> ((Inspection.Facts) section).facts().stream())
                .filter(fact -> fact.label().equals("Calibration"))
                .toList();
        assertFalse(calibrations.isEmpty());
        assertTrue(
                calibrations.stream().anyMatch(fact -> fact.value().startsWith("ratiometric line, ")),
                calibrations.toString());
    }

    @Test
    void anInputTellsItsCapacitanceWithAUnit() {
        assertEquals(Optional.of("100 nF"), FieldUnits.text("inputFarads", 1e-7));
        assertEquals("input", FieldUnits.label("inputFarads"));
        assertEquals(Optional.of("0.02 V/K"), FieldUnits.text("setPointVoltsPerKelvin", 0.02));
        assertEquals(Optional.of("5 s"), FieldUnits.text("seconds", 5));
        assertEquals("time", FieldUnits.label("seconds"));
    }
}
