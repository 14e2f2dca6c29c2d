package org.ohmloom.draw;

/** Weight of a text. */
public enum Weight {
    REGULAR,
    BOLD
}
