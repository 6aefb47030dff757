package stock

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestDrillTableIsRead(t *testing.T) {
	list, err := readDrills(strings.NewReader(drillTable))
	require.NoError(t, err)
	assert.Len(t, list, 80+26+32+129)
}

func TestBrokenDrillTables(t *testing.T) {
	const head = "system,designation,inch,mm\n"
	for _, k := range []struct{ why, table, want string }{
		{"a line too short", head + "metric,1\n", "wrong number of fields"},
		{"a system there is not", head + "imperial,1,1,25.4\n", `line 2: no system of drills is called "imperial"`},
		{"an inch that is no number", head + "number,#1,0.2x8,5.7912\n", "line 2: inch: "},
		{"a mm that is no number", head + "number,#1,0.228,\n", "line 2: mm: "},
	} {
		t.Run(k.why, func(t *testing.T) {
			_, err := readDrills(strings.NewReader(k.table))
			assert.ErrorContains(t, err, k.want)
		})
	}
}
