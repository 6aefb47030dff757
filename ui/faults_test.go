package ui

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/ui/crash"
)

// broken writes down a fault as an earlier run would have, and returns the path
// that its report has once it was told of.
func (d *desk) broken(t *testing.T) string {
	t.Helper()
	path, err := crash.Write(d.FaultFolder(), crash.Report{Time: time.Date(2026, 11, 20, 10, 0, 0, 0, time.UTC), Fault: "a wheel came off"})
	require.NoError(t, err)
	return crash.Settled(path)
}

func TestAFaultIsToldAtTheNextStart(t *testing.T) {
	d := atDesk(t, t.TempDir())
	report := d.broken(t)
	d.OfferRecovery()
	assert.Contains(t, d.asked(t), report)
	d.answer(t, "ask.ok")
	assert.Contains(t, fileText(t, report), "a wheel came off")
	d.OfferRecovery()
	assert.Nil(t, d.overlay(), "once is enough")
}

func TestAFaultIsToldWithWhatItLeft(t *testing.T) {
	d := atDesk(t, t.TempDir())
	d.edit(t, "mine")
	d.threeSeconds(t)
	d = d.afterCrash(t)
	report := d.broken(t)
	d.OfferRecovery()
	asked := d.asked(t)
	assert.Contains(t, asked, report)
	assert.Contains(t, asked, d.words.Text("recover.text"))
	d.answer(t, "recover.do")
	assert.Equal(t, "mine", d.store.Plan().Title)
	assert.Empty(t, crash.Find(d.FaultFolder()))
}

// Another question is answered first; the fault is told the next time.
func TestAFaultWaitsForAnotherQuestion(t *testing.T) {
	d := atDesk(t, t.TempDir())
	d.edit(t, "mine")
	d.threeSeconds(t)
	d = d.afterCrash(t)
	report := d.broken(t)
	d.showKeys()
	before := d.asked(t)
	d.OfferRecovery()
	assert.Equal(t, before, d.asked(t))
	d.overlay().Hide()
	d.OfferRecovery()
	assert.Contains(t, d.asked(t), report)
}

func TestWithoutAFolderNoFaultIsLookedFor(t *testing.T) {
	w := opened(t, titled(""))
	w.KeepIn("")
	assert.Equal(t, w.words.Text("recover.nofolder"), w.status.Text)
	assert.Empty(t, w.FaultFolder())
	w.OfferRecovery()
	assert.Nil(t, w.overlay())
}
