// Package plate works out what follows from a plan: where each seat, catch
// pocket, track and outline lies, in which part, and how near they come to one
// another. It judges nothing; that is package check's.
//
// Everything is placed as seen from above, with the table at zero, pivot at the
// origin. [AtDrill] turns a place into the view at the drill.
package plate
