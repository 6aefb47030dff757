package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/ui/ink"
)

// roomView is the page that makes room: the answers side by side as small
// plates, the one looked at on a large plate, and below it what a maker does by
// hand: stops moved between catches, a turn divided.
type roomView struct {
	w       *Window
	said    *widget.Label
	cards   *fyne.Container
	all     []*roomCard
	picture *sketch
	detail  *widget.Label
	board   *roomBoard
	divider *roomDivider
	pairs   *widget.Label
	hand    *fyne.Container // what is said and done below the large plate
	object  *fyne.Container

	of    *plate.Plate // whose answers are shown
	shown *detent.Room // looked at; nil: the plan as it is
	scene scene        // of what is looked at
}

func newRoomView(w *Window) *roomView {
	v := &roomView{w: w, said: widget.NewLabel(""), detail: widget.NewLabel(""), pairs: widget.NewLabel("")}
	for _, l := range []*widget.Label{v.said, v.detail, v.pairs} {
		l.Wrapping = fyne.TextWrapWord
	}
	v.cards = container.NewGridWrap(fyne.NewSize(cardWidth, cardHeight))
	v.picture = newSketch(w, fyne.NewSize(200, 180), v.paintPicture)
	v.board = newRoomBoard(w)
	v.divider = newRoomDivider(w)
	t := w.words.Text
	title := func(key string) *widget.Label {
		l := heading(t(key))
		l.Wrapping = fyne.TextWrapWord // the column is narrow
		return l
	}
	v.hand = container.New(flow{},
		v.detail,
		title("room.hand"), v.board.object,
		title("room.divide"), v.divider.object,
		title("room.pairs"), v.pairs,
	)
	right := container.NewVSplit(v.picture, container.NewVScroll(v.hand))
	right.Offset = 0.5
	answers := container.NewVScroll(v.cards)
	answers.SetMinSize(fyne.NewSize(cardWidth+scrollRoom, cardHeight))
	split := container.NewHSplit(answers, right)
	split.Offset = 0.42
	v.object = container.New(flow{last: true}, v.said, split)
	return v
}

// refresh shows the answers for the plan as it is, and asks for them if they are
// not there yet: until then the last ones stay, and can be looked at only.
func (v *roomView) refresh() {
	v.w.study()
	pl := v.w.store.Report().Plate
	studied, done := v.w.store.Studied()
	switch {
	case !done:
		v.said.SetText(v.w.words.Text("room.working"))
	case v.of != studied.Plate:
		v.of = studied.Plate
		v.show(studied.Rooms)
	}
	if v.scene.plate != pl && v.shown == nil || !done {
		v.look(nil)
	}
	v.board.refresh()
	v.divider.refresh()
	v.pairs.SetText(v.w.pairWords(v.w.store.Report()))
	v.settle()
}

// settle lays the page out anew where a text has become longer or shorter.
func (v *roomView) settle() {
	v.object.Refresh()
	v.hand.Refresh()
}

// show makes a card of every answer.
func (v *roomView) show(rooms []detent.Room) {
	v.said.SetText(v.w.roomSummary(rooms))
	v.all = nil
	v.cards.RemoveAll()
	for i := range rooms {
		card := newRoomCard(v, &rooms[i])
		v.all = append(v.all, card)
		v.cards.Add(card)
	}
	v.look(nil)
}

// look shows an answer on the large plate; nil: the plan as it is.
func (v *roomView) look(r *detent.Room) {
	v.shown = r
	pl := v.w.store.Report().Plate
	switch {
	case r == nil:
		v.detail.SetText(v.w.words.Text("room.asitis", words.Args{"Catches": catchesIn(v.w, len(pl.Plan.Catches)), "Seats": len(pl.Seats)}))
	default:
		v.detail.SetText(v.w.roomDetail(v.w.store.Plan(), *r))
		if r.Fits {
			pl = plate.New(r.Plan)
		}
	}
	if v.scene.plate != pl {
		v.scene = sceneOf(pl, v.w.store)
	}
	if pl == v.w.store.Report().Plate {
		v.scene.marks = v.w.store.Marks()
	}
	v.picture.Refresh()
	v.hand.Refresh()
}

// take makes an answer the plan, as one edit. One that was worked out for another
// plan than there is now is only looked at.
func (v *roomView) take(r *detent.Room) {
	if !r.Fits || v.of != v.w.store.Report().Plate {
		return
	}
	name := v.w.words.Text("edit.room", words.Args{"Kind": v.w.roomKind(r.Kind)})
	v.w.report(v.w.store.Replace(name, r.Plan.WithLogOf(v.w.store.Plan())))
	v.w.say(v.w.words.Text("room.taken", words.Args{"Kind": v.w.roomKind(r.Kind)}))
}

// paintPicture paints what is looked at.
func (v *roomView) paintPicture(c *ink.Canvas, d float64, p ink.Palette) {
	if v.scene.plate == nil {
		return
	}
	size := c.Img.Bounds().Size()
	view := ink.Fit(v.scene.bounds, float64(size.X)/d, float64(size.Y)/d, 12).Dense(d)
	ink.Paint(c, v.scene.drawing, view, v.scene.style(p))
	v.scene.catchMarks(c, view, p)
	var taken spots
	v.scene.dimensions(c, view, p, v.w.words, &taken)
}

// addCatch adds a catch to the plan: on the first one's ring, or on one of its own.
func (w *Window) addCatch(key string, place func(plan.Plan) plan.Placement) {
	w.report(w.store.Edit(w.words.Text(key), func(p *plan.Plan) { p.Catches = append(p.Catches, place(*p)) }))
}

// turnCatches gives each selected stop that is held by one catch the next one.
func (w *Window) turnCatches() {
	all := catchNames(w.store.Plan())
	if len(all) < 2 {
		w.say(w.words.Text("room.onecatch"))
		return
	}
	w.report(w.store.ChangeStops(w.words.Text("edit.catch.next"), func(s *plan.Stop) {
		if now := stopCatches(*s, all); len(now) == 1 {
			for i, name := range all {
				if name == now[0] {
					s.Catches = []string{all[(i+1)%len(all)]}
				}
			}
		}
	}, w.store.Selection().Stops...))
}

// roomCommands are the menu entries for what the page lets a maker do by hand.
func (w *Window) roomCommands() []*fyne.MenuItem {
	t := w.words.Text
	return []*fyne.MenuItem{
		w.command(t("menu.catch.add"), "", 0, func() { w.addCatch("menu.catch.add", plan.NewPlacement) }),
		w.command(t("menu.ring.add"), "", 0, func() { w.addCatch("menu.ring.add", plan.NewRing) }),
		w.command(t("menu.catch.next"), fyne.KeyK, ctrl, w.turnCatches),
	}
}
