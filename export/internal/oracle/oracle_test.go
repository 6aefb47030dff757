package oracle

import (
	"os/exec"
	"runtime"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const absent = "no-such-reader-anywhere"

// outcome runs f against a test double and says how it ended.
type outcome struct {
	testing.TB
	failed, skipped bool
}

func (o *outcome) Helper()               {}
func (o *outcome) Fatalf(string, ...any) { o.failed = true; runtime.Goexit() }
func (o *outcome) Skipf(string, ...any)  { o.skipped = true; runtime.Goexit() }

func need(reader string) (path string, o *outcome) {
	o = &outcome{}
	done := make(chan struct{})
	go func() {
		defer close(done)
		path = Need(o, reader)
	}()
	<-done
	return path, o
}

func TestAbsentReaderSkipsUnlessAllAreAsked(t *testing.T) {
	for _, c := range []struct {
		full   string
		failed bool
		why    string
	}{
		{"", false, "a contributor's machine need not have every reader"},
		{"0", false, "0 says no, as in other switches"},
		{"1", true, "the setup command has installed them, so one missing is a fault"},
	} {
		t.Setenv(FullTests, c.full)
		_, o := need(absent)
		assert.Equal(t, c.failed, o.failed, c.why)
		assert.Equal(t, !c.failed, o.skipped, c.why)
	}
}

func TestPresentReaderIsFound(t *testing.T) {
	t.Setenv(FullTests, "1")
	want, err := exec.LookPath("go")
	require.NoError(t, err, "the tests themselves need go")
	path, o := need("go")
	assert.False(t, o.failed)
	assert.Equal(t, want, path)
}

func TestAbsentModuleIsNamed(t *testing.T) {
	_, err := findModule(absent)
	assert.ErrorContains(t, err, absent)
}
