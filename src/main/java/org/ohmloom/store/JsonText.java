package org.ohmloom.store;

import java.util.function.Consumer;

/**
 * Writes JSON for later floors. Numbers have the fewest digits that read back as the same double; what is not finite
 * becomes null, since JSON has no word for it. What fits in 120 columns stands on one line. Keys keep the order in which
 * they were put.
 */
public final class JsonText {
    private static final int TOP_LEVEL = 1;

    private JsonText() {}

    /** The text of one object, with a line feed at its end. */
    public static String object(Consumer<JsonObjectWriter> fill) {
        JsonObjectWriter object = new JsonObjectWriter();
        fill.accept(object);
        return JsonLayout.lines(object.node(), TOP_LEVEL);
    }

    /** The text of one array, with a line feed at its end. */
    public static String array(Consumer<JsonArrayWriter> fill) {
        JsonArrayWriter array = new JsonArrayWriter();
        fill.accept(array);
        return JsonLayout.lines(array.node(), TOP_LEVEL);
    }
}
