package org.ohmloom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.lang.reflect.Field;
import java.text.Format;
import java.util.AbstractCollection;
import java.util.AbstractMap;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Collections;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

/** No state outlives the objects that own it: a static field is final and what it holds cannot change. */
class StaticStateTest {
    /** Classes whose instances can change, as the declared type of a field. */
    private static final List<Class<?>> CHANGEABLE = List.of(
            AbstractMap.class,
            AbstractCollection.class,
            StringBuilder.class,
            StringBuffer.class,
            Date.class,
            Format.class,
            BitSet.class,
            Random.class,
            ThreadLocal.class,
            AtomicInteger.class,
            AtomicLong.class,
            AtomicBoolean.class,
            AtomicReference.class);

    /** What the JDK calls its unmodifiable collections. */
    private static final List<String> UNMODIFIABLE = List.of(
            "java.util.ImmutableCollections$",
            "java.util.Collections$Unmodifiable",
            "java.util.Collections$Empty",
            "java.util.Collections$Singleton",
            "java.util.KeyValueHolder");

    @Test
    void staticFieldsAreFinal() {
        assertEquals(
                List.of(),
                namesOf(statics().stream()
                        .filter(each -> !each.getModifiers().contains(JavaModifier.FINAL))
                        .toList()));
    }

    @Test
    void staticFieldsAreOfTypesThatCannotChange() {
        assertEquals(
                List.of(),
                namesOf(statics().stream()
                        .filter(each -> each.getRawType().isArray()
                                || CHANGEABLE.stream()
                                        .anyMatch(type -> each.getRawType().isAssignableTo(type)))
                        .toList()));
    }

    /** Looks at the collections themselves; the workbench is left out, for its classes may ask for a display. */
    @Test
    void staticCollectionsRefuseToChange() throws ReflectiveOperationException {
        List<String> changeable = new ArrayList<>();
        for (JavaField each : statics()) {
            boolean collection = each.getRawType().isAssignableTo(Collection.class)
                    || each.getRawType().isAssignableTo(Map.class);
            boolean workbench =
                    Floors.floorPackage(each.getOwner().getPackageName()).equals("workbench");
            if (collection && !workbench && !isUnmodifiable(valueOf(each))) {
                changeable.add(each.getFullName());
            }
        }
        assertEquals(List.of(), changeable);
    }

    @Test
    void anUnmodifiableCollectionIsToldFromAnOrdinaryOne() {
        assertTrue(isUnmodifiable(List.of(1, 2, 3)));
        assertTrue(isUnmodifiable(Collections.unmodifiableMap(new TreeMap<String, String>())));
        assertFalse(isUnmodifiable(new ArrayList<>(List.of(1))));
    }

    private static List<JavaField> statics() {
        // A compiler-made field (an enum's values, a switch table) is synthetic and not ours.
        return OurClasses.MAIN.stream()
                .flatMap(each -> each.getFields().stream())
                .filter(each -> each.getModifiers().contains(JavaModifier.STATIC))
                .filter(each -> !each.getModifiers().contains(JavaModifier.SYNTHETIC))
                .toList();
    }

    private static Object valueOf(JavaField field) throws ReflectiveOperationException {
        Field reflected = Class.forName(field.getOwner().getName()).getDeclaredField(field.getName());
        reflected.setAccessible(true);
        return reflected.get(null);
    }

    private static boolean isUnmodifiable(Object collection) {
        return UNMODIFIABLE.stream().anyMatch(collection.getClass().getName()::startsWith);
    }

    private static List<String> namesOf(List<JavaField> fields) {
        return fields.stream().map(JavaField::getFullName).sorted().toList();
    }
}
