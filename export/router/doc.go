// Package router makes programs for a router: for each part one that drills and
// mills its holes and pockets, as the part lies face up on the machine with the
// pivot at X0 Y0 and the face at Z0.
//
// [New] works out what is cut with which tool and every move of it, or refuses
// with all that stands in the way; [Write] writes the program in the words of
// RS274/NGC (NISTIR 6556). What the window shows is drawn from the same moves
// ([Program.Draw]). Lengths are mm until they are written.
package router
