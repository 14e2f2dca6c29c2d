package org.ohmloom.manual;

/**
 * A page that was found.
 *
 * @param page    the page
 * @param score   how well it fits; only good for comparing
 * @param passage the part of its text that fits best
 */
public record Hit(Page page, double score, String passage) {}
