package org.ohmloom.pack.page;

/**
 * An entry of the outline of a PDF.
 *
 * @param title what it says
 * @param page  page it leads to, from 0
 */
public record Bookmark(String title, int page) {}
