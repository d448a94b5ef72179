/** Files that people edit: read with line numbers, held against a schema, every mistake named. */
package corewright.files;
