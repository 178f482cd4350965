/**
 * Keys of the documents: what an object says, in the order written, and the tables that say what it
 * may say.
 */
package org.sagwise.part.key;
