package plan_test

import (
	"errors"
	"io"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words/wordstest"
	"stopwright/detent/plan"
)

// minimal has only what a file must give; every key inside has a default.
const minimal = `{"format": "stopwright", "version": 1, "arrangement": {}, "turntable": {}, "base": {},
 "catch": {}, "catches": [{"name": "A", "radius": 105}], "seat": {}, "stops": []}`

func TestDecodeExample(t *testing.T) {
	p := decoded(t, fileText(t, provedFile))
	collar := plan.Collar{
		Clearance: 0.5, OutsideDiameter: 310, Thickness: 18, Material: "birch-plywood",
		Screws: plan.Screws{Count: 8, Circle: 285, Diameter: 4.5, Start: 22.5},
	}
	want := plan.Plan{
		Title:       "Swivelling sanding table",
		Scale:       1,
		Arrangement: plan.Arrangement{CatchIn: plan.PartTurntable, PositiveTurn: plan.Clockwise},
		Turntable: plan.Turntable{
			Diameter: 260, Thickness: 18, Material: "birch-plywood", PivotBore: 8,
			GuidedBy: plan.GuidePivot, RadialPlay: 0.05, BearingRadius: 85,
		},
		Base: plan.Base{
			Shape: plan.Rectangle, Width: 340, Depth: 320, Thickness: 18, Material: "birch-plywood",
			Diameter: plan.Default().Base.Diameter, // does not belong to a rectangle
		},
		Collar:  &collar,
		FaceGap: 0.2,
		Catch: plan.Catch{
			BallDiameter: 6, Protrusion: 2, FreeForce: 8, FlushForce: 20, BodyDiameter: 8, BodyLength: 13,
			FlangeDiameter: 9.5, FlangeThickness: 1, BodyAllowance: 0.1, RecessAllowance: 0.5,
		},
		Catches: []plan.Placement{{Name: "A", Azimuth: 0, Radius: 105}},
		Seat: plan.Seat{
			Form: plan.Drilled, Diameter: 4.5, Depth: 6, DrillPoint: 118, CountersinkAngle: 90, ReliefDiameter: 2.5,
		},
		Travel: plan.Span{From: -60, To: 60},
		Stops: []plan.Stop{
			{Angle: 0, Label: "square"},
			{Angle: 36, BothSides: true, Label: "5 sides", Catches: []string{"A"}},
		},
		Features: []plan.Feature{
			{Part: plan.PartBase, Kind: plan.Hole, X: 60, Y: -40, Diameter: 5, Label: "foot screw"},
			{Part: plan.PartBase, Kind: plan.Slot, X: -60, Y: -30, X2: -60, Y2: -70, Width: 8, Label: "dust"},
			{Part: plan.PartBase, Kind: plan.ArcSlot, Radius: 60, From: -30, To: 30, Width: 8, Label: "dust"},
		},
		Making: plan.Default().Making,
		Rules:  plan.Rules{Web: 2, Edge: 4},
		Shop: plan.Shop{
			Method: plan.MethodPillarDrill, SeatError: 0.5, CatchError: 0.5, Friction: 0.2, TableFriction: 0.2,
			Load: 6, StockWidth: 60, Target: 0.1, Humidity: plan.Humidity{MadeAt: 50, Low: 35, High: 70},
		},
		Router: &plan.Router{
			Units: "inch", SafeHeight: 8, Approach: 1.5, DepthPerPass: 0.8, Peck: 4, Feed: 600, PlungeFeed: 200, Rapid: 3000,
			Spindle: 16000, Cutter: 4, CutterLength: 20, DrillTo: 6, Breakthrough: 0.6, SpoilBoard: 9, Canned: true, ToolChange: "m6",
		},
		Tool: &plan.Tool{
			Offset: 1.5, Fence: 12, Turning: plan.ToolTurns, Kerf: 3,
			FenceLength: 400, FenceThickness: 18, FenceScrew: 6, FenceInset: 30,
			Marks: []plan.Mark{{Angle: -36, X: 201.4}},
		},
		Readings:  []plan.Reading{{Angle: 36, Measured: 36.12, Approach: "clockwise", Method: "square", Date: "2026-11-20"}},
		AsDrilled: []plan.AsDrilled{{Angle: 36, Catch: "A", X: 61.7, Y: 84.9}},
	}
	require.Equal(t, want, p)

	want.Router, want.Tool, want.Readings, want.AsDrilled = nil, nil, nil, nil
	require.Equal(t, want, decoded(t, fileText(t, exampleFile)))
}

func TestDecodeDefaults(t *testing.T) {
	require.Equal(t, plan.Default(), decoded(t, minimal))
	require.NoError(t, plan.Validate(plan.Default()))

	full := plan.Collar{
		Clearance: 0.5, OutsideDiameter: 310, Thickness: 18, Material: "birch-plywood",
		Screws: plan.Screws{Count: 8, Circle: 285, Diameter: 4.5, Start: 22.5},
	}
	bare := full
	bare.Screws.Count = 0
	fewer := full
	fewer.Screws.Count = 3
	for _, c := range []struct {
		why, collar string
		want        plan.Collar
	}{
		{"a collar without screws has none", `{}`, bare},
		{"a given screws section has eight", `{"screws": {}}`, full},
		{"unless it says otherwise; 3.0 is a whole number", `{"screws": {"count": 3.0}}`, fewer},
	} {
		got := decoded(t, edited(t, minimal, "collar", c.collar)).Collar
		require.NotNil(t, got, c.why)
		assert.Equal(t, c.want, *got, c.why)
	}

	disc := decoded(t, edited(t, minimal, "base", `{"shape": "disc"}`)).Base
	assert.Equal(t, 340.0, disc.Diameter, "a disc has a default too")
	tool := plan.NewTool()
	assert.Equal(t, &tool, decoded(t, edited(t, minimal, "tool", `{}`)).Tool)
	assert.Zero(t, *decoded(t, edited(t, minimal, "shop", `{"reference": 0}`)).Shop.Reference, "0 is not absent")
	assert.Nil(t, decoded(t, edited(t, minimal, "shop", `{}`)).Shop.Reference)
}

func TestDecodeText(t *testing.T) {
	for _, c := range []struct{ why, value, want string }{
		{"every short escape", `"\"\\\/\b\f\n\r\t"`, "\"\\/\b\f\n\r\t"},
		{"hexadecimal in either case", `"\u00b0\u00B0"`, "°°"},
		{"a surrogate pair", `"\ud83d\ude00 a"`, "😀 a"},
		{"plain UTF-8 between escapes", `"a°\n°b"`, "a°\n°b"},
		{"the replacement character itself is text", `"�"`, "\uFFFD"},
	} {
		assert.Equal(t, c.want, decoded(t, strings.Replace(minimal, `{`, `{"title": `+c.value+`,`, 1)).Title, c.why)
	}
	assert.Equal(t, plan.Default(), decoded(t, "\uFEFF\r\n\t "+minimal+"\n"), "a byte order mark and white space are no matter")
}

func TestDecodeMinusZero(t *testing.T) {
	p := decoded(t, edited(t, minimal, "stops", `[{"angle": -0.0}]`))
	assert.False(t, math.Signbit(p.Stops[0].Angle))
	p.Stops[0].Angle = math.Copysign(0, -1)
	assert.Contains(t, encoded(t, p), `{"angle": 0}`)
}

func TestDecodeNotPlan(t *testing.T) {
	for _, c := range []struct{ why, text string }{
		{"empty", ""},
		{"only a byte order mark", "\uFEFF"},
		{"only white space", " \n\t"},
		{"binary", "\x7fELF\x02\x01\x01\x00\x00"},
		{"a picture", "\x89PNG\r\n\x1a\n"},
		{"UTF-16", "\xff\xfe{\x00}\x00"},
		{"plain text", "Dear Sir"},
		{"a list", `[{"format": "stopwright"}]`},
		{"a text", `"stopwright"`},
		{"an object with nothing in it", `{}`},
		{"another program's file, whatever its version", `{"format": "letter", "version": 7}`},
	} {
		_, err := plan.Decode(strings.NewReader(c.text))
		require.ErrorIs(t, err, plan.ErrNotPlan, c.why)
		assert.NotContains(t, err.Error(), "\n", c.why)
		wordstest.SaidInGerman(t, err)
	}
}

func TestDecodeSyntax(t *testing.T) {
	for _, c := range []struct {
		why, text    string
		line, column int
		reason       string
	}{
		{"a comma too many in an object", "{\n \"a\": 1,\n}", 3, 1, `expected a key in double quotes, found '}'`},
		{"a comma too many in a list", `{"a": [1,]}`, 1, 10, `expected a value, found ']'`},
		{"a comma missing in an object", "{\"a\": 1\n\"b\": 2}", 2, 1, `expected a comma or }, found '"'`},
		{"a comma missing in a list", `{"a": [1 2]}`, 1, 10, `expected a comma or ], found '2'`},
		{"a colon missing", `{"a" 1}`, 1, 6, `expected a colon after the key, found '1'`},
		{"a key without quotes", `{a: 1}`, 1, 2, `expected a key in double quotes, found 'a'`},
		{"columns count characters", `{"°°": x}`, 1, 8, `expected a value, found 'x'`},
		{"a decimal comma", `{"a": 4,5}`, 1, 9, `expected a key in double quotes, found '5'`},
		{"NaN is no JSON", `{"a": NaN}`, 1, 7, `expected a value, found 'N'`},
		{"nor is +1", `{"a": +1}`, 1, 7, `expected a value, found '+'`},
		{"nor 01", `{"a": 01}`, 1, 8, `a number cannot begin with 0`},
		{"nor 1.", `{"a": 1.}`, 1, 9, `expected a digit, found '}'`},
		{"nor a sign alone", `{"a": -}`, 1, 8, `expected a digit, found '}'`},
		{"nor 1e", `{"a": 1e+}`, 1, 10, `expected a digit, found '}'`},
		{"a word misspelt", `{"a": trye}`, 1, 9, `expected true, found 'y'`},
		{"a line break in a text", "{\"a\": \"x\n\"}", 1, 9, `control character inside a text`},
		{"a zero byte in a text", "{\"a\": \"\x00\"}", 1, 8, `control character inside a text`},
		{"an unknown escape", `{"a": "\x"}`, 1, 9, `unknown escape`},
		{"a bad hexadecimal digit", `{"a": "\u00g0"}`, 1, 12, `four hexadecimal digits`},
		{"half a surrogate pair", `{"a": "\ud83d!"}`, 1, 10, `half of a surrogate pair`},
		{"two first halves", `{"a": "\ud83d\ud83d"}`, 1, 10, `half of a surrogate pair`},
		{"two plans in one file", minimal + "\n{}", 3, 1, `something after the end of the plan: '{'`},
		{"a bracket too many", `{}}`, 1, 3, `something after the end of the plan: '}'`},
		{"not UTF-8", "{\n\"a\": \"\xb0\"}", 2, 7, `not UTF-8`},
	} {
		_, err := plan.Decode(strings.NewReader(c.text))
		var syntax *plan.SyntaxError
		require.ErrorAs(t, err, &syntax, c.why)
		assert.Equal(t, []int{c.line, c.column}, []int{syntax.Line, syntax.Column}, c.why)
		assert.Contains(t, err.Error(), c.reason, c.why)
		wordstest.SaidInGerman(t, err)
		assert.False(t, syntax.Truncated, c.why)
	}
}

func TestDecodeTruncated(t *testing.T) {
	// The label holds what can be cut in two: escapes, a surrogate pair, a
	// character of two bytes.
	text := strings.Replace(fileText(t, provedFile), `"square"`, `"\ud83d\ude00 \" 90° "`, 1)
	text = strings.TrimSpace(text)
	decoded(t, text)
	for n := 1; n < len(text); n++ {
		_, err := plan.Decode(strings.NewReader(text[:n]))
		var syntax *plan.SyntaxError
		require.ErrorAs(t, err, &syntax, "cut after %d bytes", n)
		require.True(t, syntax.Truncated, "cut after %d bytes: %v", n, err)
		require.Contains(t, err.Error(), "ends in the middle")
	}
}

func TestDecodeVersion(t *testing.T) {
	for _, c := range []struct{ why, text, version string }{
		{"a newer version", edited(t, minimal, "version", `3`), "3"},
		{"whatever else is wrong", `{"format": "stopwright", "stops": 7, "new": 1, "version": 3}`, "3"},
		{"even its syntax", `{"format": "stopwright", "version": 2, "stops": [1 2]}`, "2"},
		{"even its depth", `{"format": "stopwright", "version": 2, "a": ` + strings.Repeat("[", 99), "2"},
		{"a part of a version", edited(t, minimal, "version", `1.5`), "1.5"},
	} {
		_, err := plan.Decode(strings.NewReader(c.text))
		var newer *plan.VersionError
		require.ErrorAs(t, err, &newer, c.why)
		assert.Equal(t, c.version, newer.Version, c.why)
		assert.Contains(t, err.Error(), "version "+c.version+", this program reads version 1", c.why)
		wordstest.SaidInGerman(t, err)
	}
	for _, value := range []string{`0`, `-3`, `0.5`, `"3"`, `null`, `1e999`} {
		ps := problemsOf(t, edited(t, minimal, "version", value))
		require.Len(t, ps, 1, value)
		assert.Equal(t, "version", ps[0].Path, value)
	}
	assert.Equal(t, plan.Default(), decoded(t, edited(t, minimal, "version", `1.0`)))
}

// endless gives spaces, or whatever it is, for ever or for a while, and counts.
type endless struct {
	fill  byte
	first string
	left  int // bytes
	given int
}

func (e *endless) Read(b []byte) (int, error) {
	if e.left == 0 {
		return 0, io.EOF
	}
	n := min(len(b), e.left)
	for i := range n {
		b[i] = e.fill
	}
	copy(b, e.first)
	e.first = ""
	e.left -= n
	e.given += n
	return n, nil
}

func TestDecodeLargeFiles(t *testing.T) {
	for _, c := range []struct {
		why, first string
		size       int
	}{
		{"200 MB", "{", 200_000_000},
		{"without end", "{", math.MaxInt},
		{"one byte too many", minimal, plan.MaxFileBytes + 1},
	} {
		r := &endless{fill: ' ', first: c.first, left: c.size}
		_, err := plan.Decode(r)
		require.ErrorIs(t, err, plan.ErrTooMuch, c.why)
		wordstest.SaidInGerman(t, err)
		assert.Contains(t, err.Error(), "16 MB", c.why)
		assert.LessOrEqual(t, r.given, plan.MaxFileBytes+1, c.why)
	}
	p, err := plan.Decode(&endless{fill: ' ', first: minimal, left: plan.MaxFileBytes})
	require.NoError(t, err, "the exact limit")
	assert.Equal(t, plan.Default(), p)
}

func TestDecodeManyValues(t *testing.T) {
	before := `{"format": "stopwright", "features": [`
	for _, c := range []struct{ why, text string }{
		{"half a million values", before + strings.Repeat("0,", 500_000) + "0]}"},
		{"deep objects", strings.Repeat(`{"stops":`, 100_000)},
		{"deep lists", before + strings.Repeat("[", 1_000_000)},
	} {
		_, err := plan.Decode(strings.NewReader(c.text))
		require.ErrorIs(t, err, plan.ErrTooMuch, c.why)
		wordstest.SaidInGerman(t, err)
	}
}

func TestDecodeReadError(t *testing.T) {
	broken := errors.New("the stick was pulled out")
	_, err := plan.Decode(io.MultiReader(strings.NewReader(minimal), failing{broken}))
	require.ErrorIs(t, err, broken)
}

type failing struct{ err error }

func (f failing) Read([]byte) (int, error)  { return 0, f.err }
func (f failing) Write([]byte) (int, error) { return 0, f.err }
