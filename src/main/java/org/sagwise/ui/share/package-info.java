/** How a bench gets to others: posts, pictures, codes, comparisons and what somebody measured. */
package org.sagwise.ui.share;
