// Package detent turns a plan into a report: where every seat lies and what is
// wrong. It reads no files and shows no screens.
//
// [Solve] is instant and runs at every edit. [Study] is for what takes time; it
// runs behind and can be stopped.
package detent
