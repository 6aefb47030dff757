// Package tile lays a drawing of any size on paper at full size, over as many
// sheets as it takes, so that it can be glued to the work and drilled through.
//
// The sheets overlap, and carry crosses by which they are laid over each other,
// a map of where each belongs, and in each direction a bar of known length: what
// those measure with a steel rule tells how far the printer is off, and
// [Correction] makes up for it. All sheets stand upright, so that one correction
// serves all: a printer is off by one amount along the feed of the paper and by
// another across it.
package tile
