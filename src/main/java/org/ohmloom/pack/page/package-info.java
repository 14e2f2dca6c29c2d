/**
 * Pages of the build pack: texts and tables set in millimetres on framed sheets, and sheets written as PDF and tables as
 * CSV. Knows nothing of harnesses.
 */
@NullMarked
package org.ohmloom.pack.page;

import org.jspecify.annotations.NullMarked;
