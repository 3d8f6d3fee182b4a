/**
 * Signing a report, verifying it later, and making its review again from the files inside it.
 *
 * <p>A report is signed as PAdES baseline (ETSI EN 319 142-1) with the European Commission's library, in fields that the
 * report holds ready; each signature is an incremental update, so that the bytes which an earlier signer saw stay as they
 * were. The library also validates. What it says is put into plain words here, and hardened where a signature leaves
 * bytes of the file free: the hexadecimal string that holds the signature itself.
 *
 * <p>None of this is loaded by a review.
 */
package org.shortgrain.signoff;
