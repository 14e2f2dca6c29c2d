package org.ohmloom.review;

import java.util.List;
import java.util.stream.Stream;
import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** The cautions every surface shows once: start screen, findings list, pages of the pack, command line summary. */
public final class Cautions {

    private static final MessageBundle TEXTS = MessageBundle.beside(Cautions.class, "cautions");

    /** What the results are and are not. */
    public static final Text STANDING = TEXTS.text("standing");

    /** The usual cautions, most urgent first. */
    public static final List<Text> ALL = Stream.of("disconnect", "protect", "qualified", "ventilate", "scope")
            .map(key -> TEXTS.text(key))
            .toList();

    private Cautions() {}

    /** All of it, what the results are first. */
    public static List<Text> everything() {
        return Stream.concat(Stream.of(STANDING), ALL.stream()).toList();
    }

    /** All of it as one paragraph. */
    public static Text paragraph() {
        return Text.joined(" ", everything());
    }
}
