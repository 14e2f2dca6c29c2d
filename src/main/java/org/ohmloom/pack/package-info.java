/**
 * The build pack: PDF, CSV, spreadsheet, labels.
 *
 * <p>Floor 7. PDFBox is imported here only.
 */
@NullMarked
package org.ohmloom.pack;

import org.jspecify.annotations.NullMarked;
