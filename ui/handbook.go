package ui

import (
	"regexp"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	book "stopwright/assets/guide"
)

// handbook shows the user's guide in a window of its own, to be read beside the
// work: its pages on the left, the one chosen on the right.
type handbook struct {
	w        *Window
	win      fyne.Window
	language string
	pages    []book.Page
	list     *widget.List
	text     *fyne.Container
	scroll   *container.Scroll
	shown    int
}

// The handbook's window, px of layout.
const (
	handbookWidth    = 860
	handbookHeight   = 640
	handbookContents = 0.27 // share of the width
	pictureWidth     = 520  // a picture is shown as large as that, or as it is
)

// showHandbook opens the user's guide, or brings it to the front.
func (w *Window) showHandbook() {
	if h := w.handbook; h != nil {
		if h.language == w.words.Language {
			h.win.RequestFocus()
			return
		}
		h.win.Close()
	}
	h, err := newHandbook(w)
	if err != nil { // cannot happen: a test reads it in every language
		w.tellError(err)
		return
	}
	w.handbook = h
	h.win.SetOnClosed(func() { w.handbook = nil })
	h.win.Show()
}

func newHandbook(w *Window) (*handbook, error) {
	pages, err := book.Pages(w.words.Language)
	if err != nil {
		return nil, err
	}
	h := &handbook{
		w: w, win: w.app.NewWindow(w.words.Text("menu.handbook")), language: w.words.Language,
		pages: pages, text: container.NewVBox(),
	}
	h.scroll = container.NewVScroll(container.NewPadded(h.text))
	h.list = widget.NewList(
		func() int { return len(h.pages) },
		func() fyne.CanvasObject {
			l := widget.NewLabel("")
			l.Truncation = fyne.TextTruncateEllipsis
			return l
		},
		func(i widget.ListItemID, o fyne.CanvasObject) { o.(*widget.Label).SetText(h.pages[i].Title) },
	)
	h.list.OnSelected = h.show
	split := container.NewHSplit(h.list, h.scroll)
	split.Offset = handbookContents
	h.win.SetContent(split)
	h.win.Resize(fyne.NewSize(handbookWidth, handbookHeight))
	h.win.Canvas().SetOnTypedKey(h.typedKey)
	h.list.Select(0)
	return h, nil
}

// show shows a page from its beginning.
func (h *handbook) show(i int) {
	h.shown = i
	p := h.pages[i]
	h.text.RemoveAll()
	title := heading(p.Title)
	h.text.Add(title)
	for _, b := range blocks(p.Text) {
		h.text.Add(h.object(b))
	}
	h.scroll.ScrollToTop()
}

// typedKey turns pages and scrolls while nothing has the keys.
func (h *handbook) typedKey(k *fyne.KeyEvent) {
	switch k.Name {
	case fyne.KeyEscape:
		h.win.Close()
	case fyne.KeyLeft:
		h.list.Select(max(0, h.shown-1))
	case fyne.KeyRight:
		h.list.Select(min(len(h.pages)-1, h.shown+1))
	case fyne.KeyUp:
		h.scrollBy(-1)
	case fyne.KeyDown:
		h.scrollBy(1)
	case fyne.KeyPageUp:
		h.scrollBy(-pageLines)
	case fyne.KeyPageDown, fyne.KeySpace:
		h.scrollBy(pageLines)
	}
}

// The steps of scrolling by keys.
const (
	lineHeight = 40 // px of layout
	pageLines  = 12
)

func (h *handbook) scrollBy(lines float32) {
	h.scroll.Scrolled(&fyne.ScrollEvent{Scrolled: fyne.NewDelta(0, -lines*lineHeight)})
}

// block is a stretch of a page: the text of a section in Markdown, or a picture.
type block struct {
	text    string
	picture string // name of its file; "": text
	caption string
}

// pictureLine is a line that holds a picture and nothing else.
var pictureLine = regexp.MustCompile(`^!\[(.*)\]\((.*)\)$`)

// blocks takes a page apart.
func blocks(page string) []block {
	var out []block
	var text strings.Builder
	end := func() {
		if t := strings.TrimSpace(text.String()); t != "" {
			out = append(out, block{text: t})
		}
		text.Reset()
	}
	for line := range strings.Lines(page) {
		if m := pictureLine.FindStringSubmatch(strings.TrimSpace(line)); m != nil {
			end()
			out = append(out, block{picture: m[2], caption: m[1]})
			continue
		}
		if strings.HasPrefix(line, "## ") {
			end()
		}
		text.WriteString(line)
	}
	end()
	return out
}

// object returns what shows a block.
func (h *handbook) object(b block) fyne.CanvasObject {
	if b.picture == "" {
		text := widget.NewRichTextFromMarkdown(b.text)
		text.Wrapping = fyne.TextWrapWord
		return text
	}
	data, err := book.Picture(h.language, b.picture)
	if err != nil { // a test looks at every picture
		return widget.NewLabel(b.caption)
	}
	picture := canvas.NewImageFromResource(fyne.NewStaticResource(h.language+"-"+b.picture, data))
	picture.FillMode = canvas.ImageFillContain
	width := float32(pictureWidth)
	picture.SetMinSize(fyne.NewSize(width, width/picture.Aspect()))
	return picture
}
