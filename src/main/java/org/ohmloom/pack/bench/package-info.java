/** The finished harness on the bench, everything unplugged: its nets, what each must measure, and the sheet to write it on. */
@NullMarked
package org.ohmloom.pack.bench;

import org.jspecify.annotations.NullMarked;
