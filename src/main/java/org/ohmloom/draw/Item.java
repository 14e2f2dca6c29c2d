package org.ohmloom.draw;

import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A mark in a scene together with what it stands for.
 *
 * @param layer       its layer
 * @param mark        what is drawn
 * @param element     id of the element of the harness it stands for
 * @param description what it is in a few plain words, for tooltips and for people who cannot see it
 */
public record Item(Layer layer, Mark mark, Optional<String> element, Optional<String> description) {

    /** An item that stands for no element. */
    public static Item of(Layer layer, Mark mark) {
        return new Item(layer, mark, Optional.empty(), Optional.empty());
    }

    /** An item that stands for an element. */
    public static Item of(Layer layer, Mark mark, String element, String description) {
        return new Item(layer, mark, Optional.of(element), Optional.of(description));
    }

    /** This item with other texts. */
    public Item saying(UnaryOperator<String> words) {
        Mark said = mark instanceof Text text ? text.saying(words.apply(text.text())) : mark;
        return new Item(layer, said, element, description.map(words));
    }

    /** This item placed in another scene. */
    public Item placed(Placement placement) {
        return new Item(layer, mark.placed(placement), element, description);
    }
}
