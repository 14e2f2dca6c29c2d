/**
 * What a person reads and types: words of the trade for kinds of things, numbers and settings as typed.
 */
@NullMarked
package org.ohmloom.workbench.words;

import org.jspecify.annotations.NullMarked;
