/** Time as it is played on a bench: real time owed, what was recorded, where one stands in it, and a bench that goes along. */
package org.sagwise.run.playback;
