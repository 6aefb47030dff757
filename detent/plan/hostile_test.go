package plan_test

import (
	"runtime"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

const (
	// memoryBound is the most bytes that reading any file may ask for, garbage
	// included: 500,000 values of about a hundred bytes in a list that grows by a
	// quarter at a time come to five times what they take in the end, and the text
	// itself is held twice while it is read.
	memoryBound = 24 * plan.MaxFileBytes
	// wordsBound is the longest that what is wrong with a file may be, bytes: a
	// person is to read it.
	wordsBound = 64 << 10
)

// hostile are files made to be costly: each is as large as one can be, or
// larger, of one thing that there can be too much of.
var hostile = map[string]string{
	"nesting of lists":    filled("[", ""),
	"nesting of objects":  filled(`{"a":`, ""),
	"values in a list":    filled("0,", "0]}", `{"stops": [`),
	"objects in a list":   filled("{},", "{}]}", `{"format": "stopwright", "stops": [`),
	"stops":               filled(`{"angle":1},`, `{"angle":1}]}`, `{"format": "stopwright", "stops": [`),
	"catches of a stop":   filled(`"A",`, `"A"]}]}`, `{"format": "stopwright", "stops": [{"angle": 0, "catches": [`),
	"keys not known":      filled(`"b":0,`, `"b":0}`, `{"format": "stopwright",`),
	"one key over again":  filled(`"title":"",`, `"title":""}`, `{"format": "stopwright",`),
	"length of a key":     filled("k", `": 0}`, `{"format": "stopwright", "`),
	"length of a text":    filled("é", `"}`, `{"format": "stopwright", "title": "`),
	"escapes in a text":   filled(`\u0041`, `"}`, `{"format": "stopwright", "title": "`),
	"digits of a number":  filled("9", "}", `{"format": "stopwright", "face_gap": `),
	"digits of a version": filled("9", "}", `{"format": "stopwright", "version": `),
	"white space":         filled(" ", "}", "{"),
	"lines":               filled("\n", "x", "{"),
	"bytes in all":        filled("[1],", "") + filled("[1],", ""),
	"bytes of no text":    filled("\xff", `"}`, `{"title": "`),
}

// filled returns a beginning, then as much of one piece as a file has room for,
// and an end.
func filled(piece, end string, begin ...string) string {
	before := strings.Join(begin, "")
	return before + strings.Repeat(piece, (plan.MaxFileBytes-len(before)-len(end))/len(piece)) + end
}

func TestNoFileTakesMoreMemoryThanItsBound(t *testing.T) {
	for name, text := range hostile {
		t.Run(name, func(t *testing.T) {
			runtime.GC()
			var before, after runtime.MemStats
			runtime.ReadMemStats(&before)
			_, err := plan.Decode(strings.NewReader(text))
			runtime.ReadMemStats(&after)
			require.Error(t, err)
			assert.LessOrEqual(t, after.TotalAlloc-before.TotalAlloc, uint64(memoryBound))
			assert.LessOrEqual(t, len(err.Error()), wordsBound)
		})
	}
}
