package ui

import (
	"os"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/ui/diskfile"
)

// angleSlack is how far, in degrees, an angle may be off by the rounding of a
// sine and its inverse.
const angleSlack = 1e-9

// quitting is an application that remembers being told to quit.
type quitting struct {
	fyne.App
	quits int
}

func (q *quitting) Quit() { q.quits++ }

// opened returns a shown window on a plan.
func opened(t testing.TB, p plan.Plan) *Window {
	t.Helper()
	require.NoError(t, plan.Validate(p))
	t.Setenv("HOME", t.TempDir()) // where files are looked for
	w := newWindow(&quitting{App: test.NewTempApp(t)}, p, LightLook)
	w.filing.behind = func(work, then func()) { work(); then() } // the test driver knows no other goroutine
	w.studies = atOnce()
	w.Show()
	w.win.Resize(fyne.NewSize(1180, 780))
	return w
}

// withStops returns the default plan with stops at the angles given.
func withStops(angles ...float64) plan.Plan {
	p := plan.Default()
	for _, a := range angles {
		p.Stops = append(p.Stops, plan.Stop{Angle: a})
	}
	return p
}

// angles returns the angles of the plan's stops, in its order.
func (w *Window) angles() []float64 {
	out := []float64{}
	for _, s := range w.store.Plan().Stops {
		out = append(out, s.Angle)
	}
	return out
}

// undoName is the name of the edit that undo would take back; "": none.
func (w *Window) undoName() string {
	name, _ := w.store.CanUndo()
	return name
}

// find returns the visible objects of a kind in an object, in drawing order.
func find[T fyne.CanvasObject](o fyne.CanvasObject) []T {
	var out []T
	if o == nil || !o.Visible() {
		return out
	}
	if hit, ok := o.(T); ok {
		out = append(out, hit)
	}
	var inside []fyne.CanvasObject
	switch o := o.(type) {
	case *fyne.Container:
		inside = o.Objects
	case fyne.Widget:
		inside = test.WidgetRenderer(o).Objects()
	}
	for _, child := range inside {
		out = append(out, find[T](child)...)
	}
	return out
}

// row returns the row of one of the plan's stops, which must be in sight.
func (w *Window) row(t testing.TB, stop int) *stopRow {
	t.Helper()
	rows := find[*stopRow](w.stops.list)
	at := slices.IndexFunc(rows, func(r *stopRow) bool { return r.index == stop })
	require.GreaterOrEqual(t, at, 0, "stop %d has no row in sight", stop)
	return rows[at]
}

// typeInto gives a field the keys and types; what stood in a field of the plan
// is typed over, as its text is selected then.
func (w *Window) typeInto(o fyne.Focusable, text string) {
	w.focus(o)
	w.typeText(text)
}

// typeText types where the keys go.
func (w *Window) typeText(text string) {
	for _, r := range text {
		if o := w.win.Canvas().Focused(); o != nil {
			o.TypedRune(r)
		}
	}
}

// tap taps an object in the middle of its left side, where a box to tick is.
func tap(o interface {
	fyne.CanvasObject
	fyne.Tappable
},
) {
	const in = 8 // px of layout
	test.TapAt(o, fyne.NewPos(in, o.Size().Height/2))
}

// press types one key where the keys go.
func (w *Window) press(key fyne.KeyName) {
	if o := w.win.Canvas().Focused(); o != nil {
		o.TypedKey(&fyne.KeyEvent{Name: key})
	}
}

// field returns the entry of a field of the parts panel by its path, opening
// its section.
func (w *Window) field(t testing.TB, path string) *valueEntry {
	t.Helper()
	entries := find[*valueEntry](w.fieldObject(t, path))
	require.Len(t, entries, 1, path)
	return entries[0]
}

// choice returns the list of choices of a field of the parts panel.
func (w *Window) choice(t testing.TB, path string) *widget.Select {
	t.Helper()
	choices := find[*choice](w.fieldObject(t, path))
	require.Len(t, choices, 1, path)
	return &choices[0].Select
}

func (w *Window) fieldObject(t testing.TB, path string) fyne.CanvasObject {
	t.Helper()
	for i, s := range w.parts.sections {
		of := func(f plan.Field) bool { return f.Path == path }
		if k := slices.IndexFunc(s.fields(w), of); k >= 0 {
			w.parts.accordion.Open(i)
			return s.rows[k].object
		}
	}
	require.Fail(t, "there is no field "+path)
	return nil
}

// section returns the section of the parts panel under a heading.
func (w *Window) section(t testing.TB, key string) *section {
	t.Helper()
	for i, s := range w.parts.sections {
		if s.key == key {
			w.parts.accordion.Open(i)
			return s
		}
	}
	require.Fail(t, "there is no section "+key)
	return nil
}

// texts returns all that is written in an object.
func texts(o fyne.CanvasObject) string {
	var out []string
	for _, l := range find[*widget.Label](o) {
		out = append(out, l.Text)
	}
	return strings.Join(out, "\n")
}

// overlay is what is laid over the window; nil: nothing.
func (w *Window) overlay() fyne.CanvasObject { return w.win.Canvas().Overlays().Top() }

// asked returns the text of the sheet that lies over the window.
func (w *Window) asked(t testing.TB) string {
	t.Helper()
	require.NotNil(t, w.overlay(), "nothing is asked")
	return texts(w.overlay())
}

// answer gives the answer with the text of a key.
func (w *Window) answer(t testing.TB, key string) {
	t.Helper()
	require.NotNil(t, w.overlay(), "nothing is asked")
	for _, b := range find[*sheetButton](w.overlay()) {
		if b.Text == w.words.Text(key) {
			b.OnTapped()
			return
		}
	}
	require.Fail(t, "no answer "+key)
}

// typePath puts a path into the sheet that asks for one.
func (w *Window) typePath(t testing.TB, path string) {
	t.Helper()
	require.NotNil(t, w.overlay(), "nothing is asked")
	entries := find[*sheetEntry](w.overlay())
	require.Len(t, entries, 1)
	require.Same(t, entries[0], w.win.Canvas().Focused(), "it is ready to be typed in")
	entries[0].TypedShortcut(&fyne.ShortcutSelectAll{})
	w.typeText(path)
}

// menuItem returns an item of the main menu by the key of its text and of its
// menu's.
func (w *Window) menuItem(t testing.TB, menu, item string) *fyne.MenuItem {
	t.Helper()
	for _, m := range w.win.MainMenu().Items {
		if m.Label != w.words.Text(menu) {
			continue
		}
		for _, i := range m.Items {
			if i.Label == w.words.Text(item) {
				return i
			}
		}
	}
	require.Fail(t, "no item "+item)
	return nil
}

// choose chooses an item of the main menu.
func (w *Window) choose(t testing.TB, menu, item string) {
	t.Helper()
	w.menuItem(t, menu, item).Action()
}

// onPlate returns the position of a place of the scene in the plate's view.
func (w *Window) onPlate(p geom.Point) fyne.Position {
	w.plate.refreshScene()
	return w.plate.position(p)
}

// mouse makes an event of the mouse.
func mouse(at fyne.Position, button desktop.MouseButton, mods fyne.KeyModifier) *desktop.MouseEvent {
	return &desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: at}, Button: button, Modifier: mods}
}

// click presses a button of the mouse on the plate and lets it go.
func (w *Window) click(at fyne.Position, mods fyne.KeyModifier) {
	w.plate.MouseDown(mouse(at, desktop.MouseButtonPrimary, mods))
	w.plate.MouseUp(mouse(at, desktop.MouseButtonPrimary, mods))
}

// drag presses the mouse on the plate, goes through positions, and lets go, in
// the order in which a desktop tells it.
func (w *Window) drag(button desktop.MouseButton, from fyne.Position, through ...fyne.Position) {
	w.plate.MouseDown(mouse(from, button, 0))
	at := from
	for _, to := range through {
		w.plate.Dragged(&fyne.DragEvent{
			PointEvent: fyne.PointEvent{Position: to}, Dragged: fyne.NewDelta(to.X-at.X, to.Y-at.Y),
		})
		at = to
	}
	w.plate.MouseUp(mouse(at, button, 0))
	w.plate.DragEnd()
}

// fileText returns what a file holds.
func fileText(t testing.TB, path string) string {
	t.Helper()
	data, err := os.ReadFile(path)
	require.NoError(t, err)
	return string(data)
}

// openedFrom makes a file's plan the one the window begins with.
func (w *Window) openedFrom(t *testing.T, path string) {
	t.Helper()
	_, file, err := diskfile.Read(path)
	require.NoError(t, err)
	w.Opened(file)
}
