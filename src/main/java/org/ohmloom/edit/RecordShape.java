package org.ohmloom.edit;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;

/** The components of a kind of record, to be read and to be put together anew; looked up once for each kind. */
final class RecordShape {

    private static final ClassValue<RecordShape> SHAPES = new ClassValue<>() {
        @Override
        protected RecordShape computeValue(Class<?> type) {
            return new RecordShape(type);
        }
    };

    private final List<Method> readers = new ArrayList<>();
    private final List<Class<?>> types = new ArrayList<>();
    private final List<Type> fullTypes = new ArrayList<>();
    private final List<String> names = new ArrayList<>();
    private final Constructor<?> maker;

    private RecordShape(Class<?> type) {
        for (RecordComponent component : type.getRecordComponents()) {
            readers.add(component.getAccessor());
            types.add(component.getType());
            fullTypes.add(component.getGenericType());
            names.add(component.getName());
        }
        try {
            this.maker = type.getDeclaredConstructor(types.toArray(Class<?>[]::new));
        } catch (NoSuchMethodException impossible) {
            throw new IllegalStateException(type + " has no canonical constructor", impossible);
        }
    }

    /** The shape of a record. */
    static RecordShape of(Record each) {
        return SHAPES.get(each.getClass());
    }

    int size() {
        return readers.size();
    }

    /** Declared type of a component. */
    Class<?> type(int place) {
        return types.get(place);
    }

    /** Declared type of a component with what it holds: {@code Optional<Gauge>}. */
    Type fullType(int place) {
        return fullTypes.get(place);
    }

    /** Name of a component. */
    String name(int place) {
        return names.get(place);
    }

    /** Place of the component of a name; -1 when there is none. */
    int place(String name) {
        return names.indexOf(name);
    }

    /** A component of a record of this shape. */
    Object read(Record from, int place) {
        try {
            return readers.get(place).invoke(from);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(readers.get(place) + " cannot be read", impossible);
        }
    }

    /** A record as another, but for one component. */
    Object with(Record before, int place, Object value) {
        Object[] values = new Object[size()];
        for (int k = 0; k < values.length; k++) {
            values[k] = k == place ? value : read(before, k);
        }
        return made(values);
    }

    /**
     * A record of other values.
     *
     * @throws IllegalArgumentException when its constructor refuses them
     */
    Object made(Object... values) {
        try {
            return maker.newInstance(values);
        } catch (InvocationTargetException thrown) {
            if (thrown.getCause() instanceof IllegalArgumentException refused) {
                throw refused;
            }
            throw new IllegalStateException(maker + " failed", thrown);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(maker + " cannot be called", impossible);
        }
    }
}
