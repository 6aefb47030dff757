package drawing

import (
	"go/ast"
	"go/parser"
	"go/token"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// declaredLayers reads the layers out of the source, so that one that is added
// there and forgotten in [Pens] is found.
func declaredLayers(t *testing.T) []Layer {
	t.Helper()
	file, err := parser.ParseFile(token.NewFileSet(), "layer.go", nil, 0)
	require.NoError(t, err)
	var out []Layer
	ast.Inspect(file, func(n ast.Node) bool {
		spec, ok := n.(*ast.ValueSpec)
		if !ok || len(spec.Values) != 1 {
			return true
		}
		if typ, ok := spec.Type.(*ast.Ident); ok && typ.Name == "Layer" {
			name, err := strconv.Unquote(spec.Values[0].(*ast.BasicLit).Value)
			require.NoError(t, err)
			out = append(out, Layer(name))
		}
		return true
	})
	require.NotEmpty(t, out)
	return out
}

func TestEveryLayerHasItsPenInOrder(t *testing.T) {
	var got []Layer
	for _, p := range Pens {
		got = append(got, p.Layer)
	}
	assert.Equal(t, declaredLayers(t), got)
}

func TestLayerNamesAreSafeInEveryFormat(t *testing.T) {
	seen := map[string]Layer{}
	for _, p := range Pens {
		assert.Regexp(t, `^[A-Z0-9_-]+$`, string(p.Layer))
		folded := strings.ToLower(string(p.Layer))
		assert.NotContains(t, seen, folded, "%s: readers do not tell case apart", p.Layer)
		seen[folded] = p.Layer
	}
}

func TestPensKeepToTwoWeights(t *testing.T) {
	assert.InDelta(t, 2, ThickLine/ThinLine, 0, "ISO 128-2: thick is twice thin")
	cutsAreOver := false
	for _, p := range Pens {
		if p.Layer == Shade {
			assert.Zero(t, p.Width, "filled, not drawn")
		} else {
			assert.Contains(t, []float64{ThinLine, ThickLine}, p.Width, string(p.Layer))
		}
		assert.True(t, 1 <= p.Colour && p.Colour <= 255, "%s: colour %d", p.Layer, p.Colour)
		assert.Zero(t, len(p.Dash)%2, "%s: every dash has its gap", p.Layer)
		for _, mm := range p.Dash {
			assert.Positive(t, mm, string(p.Layer))
		}
		if p.Cut {
			assert.Nil(t, p.Dash, "%s: an edge is drawn unbroken", p.Layer)
		}
		assert.False(t, p.Cut && cutsAreOver, "%s: what is cut comes first", p.Layer)
		cutsAreOver = !p.Cut
	}
}

func TestPenOf(t *testing.T) {
	for _, p := range Pens {
		assert.Equal(t, p, PenOf(p.Layer))
	}
	assert.Equal(t, Pen{Layer: "NEW", Width: ThinLine, Colour: 7}, PenOf("NEW"), "an unknown layer is thin and black")
}
