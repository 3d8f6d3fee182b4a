/** A review on a terminal. */
package org.shortgrain.report.text;
