package plan_test

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"reflect"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

const (
	exampleFile = "../../testdata/plans/example.stopwright"        // every section but those for proving
	provedFile  = "../../testdata/plans/example-proved.stopwright" // the same plate, with all of them
)

func fileText(t testing.TB, name string) string {
	t.Helper()
	text, err := os.ReadFile(name)
	require.NoError(t, err)
	return string(text)
}

func decoded(t testing.TB, text string) plan.Plan {
	t.Helper()
	p, err := plan.Decode(strings.NewReader(text))
	require.NoError(t, err)
	return p
}

func encoded(t testing.TB, p plan.Plan) string {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, plan.Encode(&b, p))
	return b.String()
}

// problemsOf returns what is wrong with a file that reads as JSON.
func problemsOf(t testing.TB, text string) plan.Problems {
	t.Helper()
	_, err := plan.Decode(strings.NewReader(text))
	var ps plan.Problems
	require.ErrorAs(t, err, &ps)
	return ps
}

// edited returns text, JSON, with the value at path (as stops[1].angle) replaced
// by value, JSON too; an empty value removes the key. It is written with
// encoding/json alone, so that it judges this package from outside.
func edited(t testing.TB, text, path, value string) string {
	t.Helper()
	decoder := json.NewDecoder(strings.NewReader(text))
	decoder.UseNumber()
	var root any
	require.NoError(t, decoder.Decode(&root))
	steps := strings.FieldsFunc(path, func(r rune) bool { return r == '.' || r == '[' || r == ']' })
	at := root
	for _, step := range steps[:len(steps)-1] {
		at = member(t, at, step)
	}
	last := steps[len(steps)-1]
	switch in := at.(type) {
	case map[string]any:
		in[last] = json.RawMessage(value)
		if value == "" {
			delete(in, last)
		}
	case []any:
		i, err := strconv.Atoi(last)
		require.NoError(t, err)
		in[i] = json.RawMessage(value)
	default:
		t.Fatalf("nothing at %s", path)
	}
	out, err := json.Marshal(root)
	if err != nil { // a value that is no JSON on purpose is not for this function
		t.Fatal(err)
	}
	return string(out)
}

func member(t testing.TB, at any, step string) any {
	t.Helper()
	if list, ok := at.([]any); ok {
		i, err := strconv.Atoi(step)
		require.NoError(t, err)
		return list[i]
	}
	object, ok := at.(map[string]any)
	require.True(t, ok, step)
	require.Contains(t, object, step)
	return object[step]
}

// fullPlan returns a plan that has everything a plan can have.
func fullPlan(t testing.TB) plan.Plan {
	t.Helper()
	p := decoded(t, fileText(t, provedFile))
	reference, underside := 36.0, 20.0
	p.Shop.Reference, p.Tool.FenceUnderside = &reference, &underside
	p.Making = everyFitting()
	p.Ticks = []string{"final base 61.72,84.95"}
	return p
}

// everyFitting returns a making no group of which is as usual, so that a file
// has all of them.
func everyFitting() plan.Making {
	m := plan.Default().Making
	m.KnockOut = 4
	m.Pivot = plan.PivotFit{Turntable: 0.1, Base: 0.05}
	m.Screws = plan.ScrewHoles{Size: "#8", Pilot: 2.8, PilotDepth: 15, Head: 8, HeadDepth: 4}
	m.Dust.Width, m.Registration.Diameter, m.Fence.Width = 6, 6, 6.6
	m.EndStops.Diameter, m.Clamp.Diameter = 6, 8
	m.WearRing.Width, m.Carrier.Width = 20, 24
	return m
}

// leaves calls visit for every field of a plan that is not a struct or a list,
// with its Go path.
func leaves(v reflect.Value, path string, visit func(path string, leaf reflect.Value)) {
	switch v.Kind() {
	case reflect.Pointer:
		leaves(v.Elem(), path, visit)
	case reflect.Struct:
		for i := range v.NumField() {
			leaves(v.Field(i), path+"."+v.Type().Field(i).Name, visit)
		}
	case reflect.Slice:
		for i := range v.Len() {
			leaves(v.Index(i), fmt.Sprintf("%s[%d]", path, i), visit)
		}
	default:
		visit(path, v)
	}
}

// change sets a leaf to something else.
func change(leaf reflect.Value) {
	switch leaf.Kind() {
	case reflect.Float64:
		leaf.SetFloat(leaf.Float() + 0.25)
	case reflect.Int:
		leaf.SetInt(leaf.Int() + 1)
	case reflect.Bool:
		leaf.SetBool(!leaf.Bool())
	case reflect.String:
		leaf.SetString(leaf.String() + "x")
	default:
		panic("a plan has a field of a new type: " + leaf.Kind().String())
	}
}
