package org.ohmloom.draw;

/**
 * A connector on a card.
 *
 * @param element     id of the connector
 * @param title       its id as shown
 * @param subtitle    cavities, as "4-way"
 * @param description what it is in plain words
 */
record Tab(String element, String title, String subtitle, String description) {}
