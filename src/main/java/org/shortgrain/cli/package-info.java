/** The command line: arguments in, calls to the layers above, exit codes out. */
package org.shortgrain.cli;
