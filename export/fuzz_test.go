package export

import (
	"bytes"
	"context"
	"errors"
	"os"
	"path/filepath"
	"regexp"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/plan"
	"stopwright/export/router"
)

const (
	// fuzzSeats and fuzzFeatures keep a plan small enough that thousands are
	// tried in a minute.
	fuzzSeats    = 100
	fuzzFeatures = 100
	// studied is how long the slow work may go on before it is told to stop: to
	// the end it takes seconds, and the fuzzer takes ten of them for a hang.
	studied = 200 * time.Millisecond
)

// notNumbers is how Go writes what is no number, where it stands alone.
var notNumbers = regexp.MustCompile(`\bNaN\b|[+-]Inf\b`)

// Whatever plan is accepted is worked out and comes out as every kind of file:
// without a panic, without an end that never comes, and with nothing but
// numbers where numbers belong.
func FuzzPlan(f *testing.F) {
	for _, name := range []string{"example.stopwright", "example-proved.stopwright"} {
		text, err := os.ReadFile(filepath.Join("..", "testdata", "plans", name))
		require.NoError(f, err)
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		p, err := plan.Decode(bytes.NewReader(data))
		if err != nil || 2*len(p.Stops)*len(p.Catches) > fuzzSeats || len(p.Features) > fuzzFeatures {
			return
		}
		said := notNumbers.Match(data) // by the maker, in a label
		sound := func(name string, text []byte) {
			if !said && notNumbers.Match(text) {
				t.Fatalf("%s holds %q", name, notNumbers.Find(text))
			}
		}

		ctx, stop := context.WithTimeout(t.Context(), studied)
		defer stop()
		r, err := detent.Study(ctx, detent.Solve(p))
		if err != nil {
			require.ErrorIs(t, err, context.DeadlineExceeded)
		}
		for _, language := range words.Languages() {
			c, err := words.In(language)
			require.NoError(t, err)
			var report bytes.Buffer
			require.NoError(t, r.Encode(&report, c))
			sound("the report", report.Bytes())
		}
		var q Request
		for _, format := range Formats {
			*format.Path(&q) = "plate" + format.Ending
		}
		for _, o := range q.outputs(r) {
			var file bytes.Buffer
			err := o.write(&file)
			if refused := (*router.Refusal)(nil); errors.As(err, &refused) { // a machine is not told to do what it cannot
				require.Zero(t, file.Len())
				continue
			}
			require.NoError(t, err, o.path)
			sound(o.path, file.Bytes())
		}
	})
}
