/**
 * Words of the trade that every layer shares: grain directions and citations; and what has no trade, but several
 * layers need: text for a terminal, a thing made on demand. Knows nothing else of the tool.
 */
package org.shortgrain.terms;
