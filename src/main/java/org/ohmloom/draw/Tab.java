package org.ohmloom.draw;

/**
 * A connector on a card, or the card's own terminals.
 *
 * @param element     id of the connector; of the component for its own terminals
 * @param title       its id, or the names of the terminals
 * @param subtitle    cavities, as "4-way"
 * @param connector   whether it is a connector
 * @param description what it is in plain words
 */
record Tab(String element, String title, String subtitle, boolean connector, String description) {}
