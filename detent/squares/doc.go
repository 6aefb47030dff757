// Package squares fits straight-line laws to readings by least squares and says
// how well it can know them: standard errors, how strange one reading is, and
// how many readings are too few.
//
// Plain numbers in, plain numbers out; no number it returns with true is NaN or
// infinite.
package squares
