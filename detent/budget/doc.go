// Package budget adds up independent errors: how far off their sum may be at
// worst, as a standard deviation, and 95 times in 100. It knows nothing of
// plates; sizes may be in any one unit.
//
// There are two ways, and each checks the other. [Sum] works with formulas:
// the distribution of a sum follows exactly from those of its terms. [Run]
// draws the errors many times over, as JCGM 101:2008 (Propagation of
// distributions using a Monte Carlo method) describes, and takes any model.
package budget
