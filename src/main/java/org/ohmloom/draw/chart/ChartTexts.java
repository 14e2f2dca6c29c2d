package org.ohmloom.draw.chart;

import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/** What charts say themselves: on axes, in keys and of what they mark, from the bundle {@code charts}. */
final class ChartTexts {

    private static final MessageBundle TEXTS = MessageBundle.beside(ChartTexts.class, "charts");

    private ChartTexts() {}

    /** A text of the bundle with its gaps filled. */
    static Text text(String key, Object... values) {
        return TEXTS.text(key, values);
    }
}
