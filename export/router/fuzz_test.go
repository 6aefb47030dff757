package router_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

// Whatever bytes a maker's words are, a program moves as without them.
func FuzzWords(f *testing.F) {
	for _, s := range []string{"", ")", "G0 Z-50", "%", "\nM3", "(MSG,", "~!?", "\u2028G1", "𝛼\xff", strings.Repeat("a", 300), "N1 O100"} {
		f.Add(s)
	}
	plain := replayed(f, text(f, made(f, trial(), plan.PartBase))).motions
	f.Fuzz(func(t *testing.T, s string) {
		p := trial()
		p.Title, p.Features[0].Label = s, s
		if plan.Validate(p) != nil {
			return // no plan says this
		}
		require.Equal(t, plain, replayed(t, text(t, made(t, p, plan.PartBase))).motions)
	})
}
