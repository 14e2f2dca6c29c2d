/**
 * Commands with names, keys and reasons for not being ready, the book of them, and the search in it.
 */
@NullMarked
package org.ohmloom.workbench.command;

import org.jspecify.annotations.NullMarked;
