/** Whether something that is measured again and again still does what it did: control charts. */
package corewright.measures.control;
