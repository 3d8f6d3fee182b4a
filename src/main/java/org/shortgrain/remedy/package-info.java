/**
 * What would clear a part: changes of its description, each reviewed again in full, ranked by what they clear and what they
 * cost.
 */
package org.shortgrain.remedy;
