/** Calibration: keys of scenarios found from logs, with what is then known of every number. */
@org.jspecify.annotations.NullMarked
package soakloop.fit;
