/** Words of the trade that every layer shares: grain directions and citations. Knows nothing else of the tool. */
package org.shortgrain.terms;
