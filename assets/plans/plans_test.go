package plans_test

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/plans"
	"stopwright/detent"
	"stopwright/detent/check"
	"stopwright/detent/plan"
)

// read returns a demonstration's file and the plan in it.
func read(t *testing.T, d plans.Demo) ([]byte, plan.Plan) {
	t.Helper()
	file, err := plans.Open(d.Name)
	require.NoError(t, err)
	p, err := plan.Decode(bytes.NewReader(file))
	require.NoError(t, err)
	return file, p
}

// A demonstration is what the program itself would have saved, so that saving
// one unchanged gives the same file.
func TestDemonstrationsAreWrittenAsTheProgramWrites(t *testing.T) {
	for _, d := range plans.List() {
		t.Run(d.Name, func(t *testing.T) {
			file, p := read(t, d)
			var again bytes.Buffer
			require.NoError(t, plan.Encode(&again, p))
			assert.Equal(t, again.String(), string(file))
		})
	}
}

// Each demonstration clicks, centres and holds, and may be cut as it is. What is
// told of one all the same is listed.
func TestDemonstrationsWork(t *testing.T) {
	notes := map[string][]string{
		"sanding-table": {"not-a-lock"},
		"camera-head":   {"not-a-lock"},
		"vice-base":     {"dust-trapped", "not-a-lock"}, // a relief hole would let dust in from the table's top
	}
	for _, d := range plans.List() {
		t.Run(d.Name, func(t *testing.T) {
			_, p := read(t, d)
			r := detent.Solve(p)
			var told []string
			for _, f := range r.Findings {
				assert.Equal(t, check.Note, f.Severity, "%s: %+v", f.ID, f)
				told = append(told, f.ID)
			}
			assert.Equal(t, notes[d.Name], told)
			require.Len(t, r.Plate.Holds, 1)
			h := r.Plate.Holds[0]
			require.True(t, h.Clicks && h.HasDead)
			assert.Greater(t, h.Centring, 3*h.Drag, "pulls home with something to spare")
			assert.Greater(t, h.Holding, 5*h.Drag, "is felt")
			assert.Less(t, h.Dead.Degrees(), p.Shop.Target/2, "comes to rest where it should")
			home, ok := r.Plate.Clicks[0].Home()
			require.True(t, ok)
			assert.Zero(t, home.Play)
			reach := p.Catch.Protrusion - p.FaceGap
			assert.Greater(t, reach-home.Drop, 0.2, "mm to spare before the housing holds the ball back")
		})
	}
}

// The three between them hold what a maker may meet: what each is for must not
// be lost in a later edit of its file.
func TestDemonstrationsShowWhatTheyAreFor(t *testing.T) {
	const mm = 1e-9 // coordinates of exact constructions, far above rounding
	for name, shows := range map[string]func(t *testing.T, p plan.Plan, r detent.Report){
		"sanding-table": func(t *testing.T, p plan.Plan, r detent.Report) {
			assert.NotNil(t, p.Collar)
			for i, s := range r.Plate.Seats { // in order of angle: the mirror is the other end's
				mirror := r.Plate.Seats[len(r.Plate.Seats)-1-i]
				assert.InDelta(t, -s.Centre.X, mirror.Centre.X, mm, "stops on both sides")
				assert.InDelta(t, s.Centre.Y, mirror.Centre.Y, mm, "stops on both sides")
			}
		},
		"camera-head": func(t *testing.T, p plan.Plan, r detent.Report) {
			assert.Nil(t, p.Collar)
			assert.Equal(t, plan.Disc, p.Base.Shape)
			assert.Len(t, r.Plate.Seats, 16)
			for _, s := range r.Plate.Seats { // sixteen equal webs leave no room for unequal steps
				assert.InDelta(t, r.Plate.Seats[0].Web, s.Web, mm, s.Tag)
			}
		},
		"vice-base": func(t *testing.T, p plan.Plan, _ detent.Report) {
			assert.Equal(t, plan.PartBase, p.Arrangement.CatchIn)
			assert.Equal(t, plan.Counterclockwise, p.Arrangement.PositiveTurn)
			for _, s := range p.Stops {
				assert.GreaterOrEqual(t, s.Angle, 0.0)
				assert.False(t, s.BothSides)
			}
		},
	} {
		t.Run(name, func(t *testing.T) {
			_, p := read(t, plans.Demo{Name: name})
			shows(t, p, detent.Solve(p))
		})
	}
}

// A file that List forgets would be carried in the program and never offered.
func TestEveryFileIsListed(t *testing.T) {
	files, err := filepath.Glob("*.stopwright")
	require.NoError(t, err)
	var listed []string
	for _, d := range plans.List() {
		listed = append(listed, d.File())
	}
	assert.ElementsMatch(t, files, listed)
}

func TestOpenNamesWhatThereIs(t *testing.T) {
	for _, name := range []string{"", "sanding", "sanding-table.stopwright", "../plans/vice-base"} {
		_, err := plans.Open(name)
		require.Error(t, err, name)
		assert.ErrorContains(t, err, "sanding-table, camera-head, vice-base")
	}
}

func TestOpenGivesBytesOfOnesOwn(t *testing.T) {
	first, err := plans.Open("vice-base")
	require.NoError(t, err)
	first[0] = 'x'
	second, err := plans.Open("vice-base")
	require.NoError(t, err)
	onDisk, err := os.ReadFile("vice-base.stopwright")
	require.NoError(t, err)
	assert.Equal(t, onDisk, second)
}
