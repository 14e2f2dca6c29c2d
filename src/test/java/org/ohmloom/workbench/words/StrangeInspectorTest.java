package org.ohmloom.workbench.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.model.Component;
import org.ohmloom.store.HarnessText;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.desk.Selection;

/** In the made-up language no English is left in what the inspector tells of each kind of thing. */
@ExtendWith(InStrangeLanguage.class)
class StrangeInspectorTest {

    /** A place of a formula that is cited, and the ids of the worst combinations of loads. */
    private static final String AS_THEY_ARE = " tbase worst combination ";

    /** Things of a kind that are looked at. */
    private static final int MOST_OF_A_KIND = 4;

    @ParameterizedTest
    @ValueSource(strings = {"rescue-pickup", "workboat", "faults"})
    void whatIsToldOfEachKindIsStrange(String example) throws IOException {
        Stage stage = new Stage();
        stage.openExample(example);
        PlainWords plain = new PlainWords(
                HarnessText.write(stage.desk().harness().orElseThrow()) + StrangeViewsTest.cited() + AS_THEY_ARE);
        Set<String> left = new TreeSet<>();
        Map<Class<?>, Integer> seen = new HashMap<>();
        stage.desk().harness().orElseThrow().registers().forEach(register -> register.all()
                .forEach(element -> {
                    Class<?> kind = element instanceof Component component
                            ? component.device().getClass()
                            : element.getClass();
                    if (seen.merge(kind, 1, Integer::sum) <= MOST_OF_A_KIND) {
                        OnEventThread.run(() -> {
                            stage.desk()
                                    .select(Selection.of(List.of(element.id().value())));
                            for (String line :
                                    ShownTexts.in(stage.view.inspector().content())) {
                                Set<String> words = plain.in(line);
                                if (!words.isEmpty()) {
                                    left.add(kind.getSimpleName() + ": " + words + " in " + line);
                                }
                            }
                        });
                    }
                }));
        assertEquals(Set.of(), left, String.join("\n", left));
    }
}
