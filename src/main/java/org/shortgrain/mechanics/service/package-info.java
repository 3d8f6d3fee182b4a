/** Lasting service stress at a place: as declared, from force over area, or from pressure in a wall. Pure, SI. */
package org.shortgrain.mechanics.service;
