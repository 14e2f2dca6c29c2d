/** The launcher; everything else lives on one of the floors below it. */
@NullMarked
package org.ohmloom;

import org.jspecify.annotations.NullMarked;
