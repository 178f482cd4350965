/**
 * What is joined to what in a scenario, and nothing else: terminals, links and the nets that they
 * make. Knows no volt, no cell and no metal; who asks says which links count.
 */
package org.sagwise.scenario.net;
