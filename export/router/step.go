package router

import "stopwright/detent/geom"

// Job is what a hole is for.
type Job string

// The jobs.
const (
	Pivot    Job = "pivot"    // bore on the pivot
	Recess   Job = "recess"   // for a catch's flange
	Body     Job = "body"     // bore for a catch's body
	Seat     Job = "seat"     // to its own depth
	Relief   Job = "relief"   // on through a seat's floor
	Chamfer  Job = "chamfer"  // of a seat's rim
	Other    Job = "hole"     // the maker's own holes
	Screw    Job = "screw"    // collar screws
	Head     Job = "head"     // recess for the head of one
	KnockOut Job = "knockout" // on through a pocket's floor
)

// Step is a run of like holes made with one tool.
type Step struct {
	Job      Job
	Tool     int     // into the program's tools
	Diameter float64 // of the holes at the face
	Depth    float64 // of the tool's end below the face
	Through  bool
	Mill     bool // along a helix; else straight down
	Holes    []Hole
}

// Hole is one place to cut, as seen from the face that is cut.
type Hole struct {
	Tag string
	At  geom.Point
}

// cut is a step before its tool has a number.
type cut struct {
	Step
	tool Tool
}

// join puts together the steps that differ only in their holes, in the order in
// which each first comes.
func join(cuts []cut) []cut {
	var out []cut
	at := map[alike]int{}
	for _, c := range cuts {
		key := c.key()
		if i, known := at[key]; known {
			out[i].Holes = append(out[i].Holes, c.Holes...)
			continue
		}
		at[key] = len(out)
		out = append(out, c)
	}
	return out
}

// key is the same for steps that differ only in their holes.
func (c cut) key() alike { return alike{c.Job, c.Diameter, c.Depth, c.tool} }

type alike struct {
	job             Job
	diameter, depth float64
	tool            Tool
}

// number gives the tools their numbers, in the order in which they are needed,
// and puts all steps of one tool together, so that none is fitted twice.
func number(cuts []cut) ([]Tool, []Step) {
	var tools []Tool
	index := map[Tool]int{}
	for _, c := range cuts {
		if _, known := index[c.tool]; !known {
			index[c.tool] = len(tools)
			tools = append(tools, c.tool)
		}
	}
	var steps []Step
	for i, t := range tools {
		for _, c := range cuts {
			if c.tool == t {
				c.Tool = i
				steps = append(steps, c.Step)
			}
		}
	}
	return tools, steps
}
