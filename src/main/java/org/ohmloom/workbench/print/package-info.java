/**
 * Printing: the sheets of documents and lists looked at before and sent to a printer.
 */
@NullMarked
package org.ohmloom.workbench.print;

import org.jspecify.annotations.NullMarked;
