/** Shortgrain: judges whether a metallic part can fail by stress-corrosion cracking. */
package org.shortgrain;
