/**
 * Cures for cautions: edits with a name, each tried on the bench before it is offered, so that none
 * leaves or brings what is graver than what it cures.
 */
package org.sagwise.assessment.fix;
