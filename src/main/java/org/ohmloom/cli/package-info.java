/**
 * The command line; {@code org.ohmloom.Ohmloom} is the launcher.
 *
 * <p>Floor 8. picocli is imported here only.
 */
@NullMarked
package org.ohmloom.cli;

import org.jspecify.annotations.NullMarked;
