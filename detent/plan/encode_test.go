package plan_test

import (
	"bytes"
	"encoding/json"
	"errors"
	"flag"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

var update = flag.Bool("update", false, "rewrite the golden files")

// canonicalFile is the proved example as Encode writes it.
const canonicalFile = "../../testdata/plans/example-canonical.stopwright"

func TestEncodeGolden(t *testing.T) {
	got := encoded(t, decoded(t, fileText(t, provedFile)))
	if *update {
		require.NoError(t, os.WriteFile(canonicalFile, []byte(got), 0o644))
	}
	require.Equal(t, fileText(t, canonicalFile), got)
}

func TestEncodeKeepsEveryKeyOfTheExample(t *testing.T) {
	for _, name := range []string{exampleFile, provedFile} {
		text := strings.Replace(fileText(t, name), `"protrusion": 2.0`, `"protrusion": 2`, 1)
		got := encoded(t, decoded(t, text))
		require.JSONEq(t, text, got, name)

		// Without white space the two are the same text, so the order is too.
		var want, have bytes.Buffer
		require.NoError(t, json.Compact(&want, []byte(text)))
		require.NoError(t, json.Compact(&have, []byte(got)))
		require.Equal(t, want.String(), have.String(), name)
	}
}

func TestEncodeThenDecode(t *testing.T) {
	disc := plan.Default()
	disc.Base.Shape = plan.Disc
	odd := plan.Default()
	odd.Title = "<b>&\u2028\" \\ \x00\x7f 😀 \uFFFD \uFEFF"
	odd.Stops = []plan.Stop{{Angle: 180.0 / 7}, {Angle: math.SmallestNonzeroFloat64}, {Angle: -1e-7}, {Angle: 360}}
	for why, p := range map[string]plan.Plan{
		"the defaults":                 plan.Default(),
		"everything":                   fullPlan(t),
		"a disc":                       disc,
		"awkward characters and sizes": odd,
	} {
		text := encoded(t, p)
		require.True(t, json.Valid([]byte(text)), why)
		back := decoded(t, text)
		require.Equal(t, p, back, why)
		require.Equal(t, text, encoded(t, back), why)
	}
}

func TestEncodeLeavesOutWhatIsAbsent(t *testing.T) {
	text := encoded(t, plan.Default())
	for _, key := range []string{"collar", "router", "tool", "readings", "as_drilled", "reference"} {
		assert.NotContains(t, text, `"`+key+`"`)
	}
	assert.Contains(t, text, `"stops": [],`, "a file must give the stops")
	p := plan.Default()
	p.Stops = []plan.Stop{{Angle: 5}}
	assert.Contains(t, encoded(t, p), `    {"angle": 5}`+"\n", "an item is one line and says only what it must")
}

func TestEncodeRefuses(t *testing.T) {
	var out bytes.Buffer
	bad := plan.Default()
	bad.FaceGap = math.NaN()
	var ps plan.Problems
	require.ErrorAs(t, plan.Encode(&out, bad), &ps)

	big := plan.Default() // every value is allowed, but not so many
	for range 1700 {
		big.Stops = append(big.Stops, plan.Stop{Label: strings.Repeat("x", plan.MaxText)})
	}
	require.NoError(t, plan.Validate(big))
	require.ErrorIs(t, plan.Encode(&out, big), plan.ErrTooMuch, "Decode would not take it back")
	assert.Zero(t, out.Len(), "nothing is half written")

	full := errors.New("no room left")
	require.ErrorIs(t, plan.Encode(failing{full}, plan.Default()), full)
}

func manyStops() plan.Plan {
	p := plan.Default()
	for i := range plan.MaxSeats {
		p.Stops = append(p.Stops, plan.Stop{Angle: float64(i) * 0.03, Label: "stop " + strconv.Itoa(i), Catches: []string{"A"}})
	}
	return p
}

func BenchmarkEncode(b *testing.B) {
	p := manyStops()
	b.ReportAllocs()
	for b.Loop() {
		var out bytes.Buffer
		require.NoError(b, plan.Encode(&out, p))
	}
}

func BenchmarkDecode(b *testing.B) {
	text := encoded(b, manyStops())
	b.ReportAllocs()
	b.SetBytes(int64(len(text)))
	for b.Loop() {
		decoded(b, text)
	}
}

func BenchmarkEqual(b *testing.B) {
	p := manyStops()
	q := p.Clone()
	for b.Loop() {
		if !plan.Equal(p, q) {
			b.Fatal("a clone differs")
		}
	}
}
