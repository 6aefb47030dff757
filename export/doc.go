// Package export is where plans and what follows from them meet the disk: it
// reads and saves plan files, and writes a report's drawings and charts as a
// bundle of files. Nothing is ever half written: a file is replaced only by a
// whole one.
package export
