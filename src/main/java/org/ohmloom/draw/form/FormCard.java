package org.ohmloom.draw.form;

import java.util.List;
import org.ohmloom.draw.Item;

/**
 * What is fitted at a breakout or at an end, drawn to be put beside it.
 *
 * @param widthMm  width, mm
 * @param heightMm height, mm
 * @param items    its picture from its upper left corner
 */
record FormCard(double widthMm, double heightMm, List<Item> items) {

    FormCard {
        items = List.copyOf(items);
    }
}
