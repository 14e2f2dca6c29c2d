/**
 * The manual: its pages, those written from rules, tables and formulas, and the search in them.
 *
 * <p>Floor 7. The pages are Markdown beside this package's classes, readable in the repository as they are. The library
 * that reads Markdown is imported here only.
 */
@NullMarked
package org.ohmloom.manual;

import org.jspecify.annotations.NullMarked;
