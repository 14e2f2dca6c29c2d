package org.ohmloom.review;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.ohmloom.model.Harness;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessText;

/** An example of a rule with some of its text exchanged, each pair old and new. */
final class Altered {

    private Altered() {}

    static Harness of(Harness example, String... oldAndNew) {
        String text = HarnessText.write(example);
        for (int k = 0; k < oldAndNew.length; k += 2) {
            assertTrue(text.contains(oldAndNew[k]), "the example does not contain " + oldAndNew[k]);
            text = text.replace(oldAndNew[k], oldAndNew[k + 1]);
        }
        try {
            return HarnessText.read(text, Path.of("altered"));
        } catch (HarnessFileException refused) {
            throw new AssertionError(refused.getMessage(), refused);
        }
    }
}
