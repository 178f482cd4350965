/** What hands do on the bench, whatever moves them: one machine behind mouse, clicks and keys. Knows no toolkit. */
package org.sagwise.interaction;
