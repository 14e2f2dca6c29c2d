package org.ohmloom.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Device;
import org.ohmloom.model.Draw;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OutputPin;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.UnknownKeys;
import org.ohmloom.model.WireColour;
import org.ohmloom.units.Gauge;

/** The page on the file format tells the truth and leaves nothing out. */
@BesideOthers
class FileFormatPageTest {

    @Test
    void theExampleOfThePageIsReadAndIsCanonical() throws HarnessFileException {
        Harness harness = HarnessText.read(SmallExample.text(), SmallExample.PAGE);
        assertEquals(4, harness.wires().size());
        assertEquals(SmallExample.text(), HarnessText.write(harness));
    }

    @Test
    void everyKeyAndEveryWordIsOnThePage() {
        Set<String> words = new TreeSet<>(Set.of("format", "version", "kind", "sensing", "loose"));
        gather(Harness.class, words);
        words.removeAll(Set.of("unknownKeys"));
        assertTrue(words.size() > 200, "only " + words.size() + " words were found in the model");
        String page = SmallExample.page();
        words.removeIf(word -> page.contains("`" + word + "`") || page.contains("\"" + word + "\":"));
        assertEquals(Set.of(), words);
    }

    /** Names of record components, words of enumerations and kinds, from the types of the model themselves. */
    private static void gather(Type type, Set<String> words) {
        if (type instanceof ParameterizedType generic) {
            for (Type argument : generic.getActualTypeArguments()) {
                gather(argument, words);
            }
        } else if (type instanceof Class<?> single && single.getName().startsWith("org.ohmloom.")) {
            gatherOurs(single, words);
        }
    }

    private static void gatherOurs(Class<?> type, Set<String> words) {
        boolean isText = ElementId.class.isAssignableFrom(type) || type == WireColour.class || type == Gauge.class;
        if (isText || type == UnknownKeys.class || type == OutputPin.class) {
            return;
        }
        if (type.isEnum()) {
            for (Object constant : type.getEnumConstants()) {
                words.add(SimpleForms.word((Enum<?>) constant));
            }
        } else if (type.isSealed()) {
            for (Class<?> kind : type.getPermittedSubclasses()) {
                boolean named = type == Draw.class || type == Device.class || type == Calibration.class;
                if (named && kind != ProtectiveDevice.class) {
                    words.add(SimpleForms.word(kind));
                }
                gather(kind, words);
            }
        } else {
            for (RecordComponent component : type.getRecordComponents()) {
                words.add(component.getName());
                gather(component.getGenericType(), words);
            }
        }
    }
}
