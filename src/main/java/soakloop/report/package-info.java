/** Charts, HTML, CSV and JSON made from results. */
@NullMarked
package soakloop.report;

import org.jspecify.annotations.NullMarked;
