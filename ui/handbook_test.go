package ui

import (
	"bytes"
	"image"
	"image/png"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	book "stopwright/assets/guide"
	"stopwright/assets/words"
)

// read returns all that stands on the page of the guide that can be seen.
func (h *handbook) read() string {
	var out []string
	for _, o := range h.text.Objects {
		switch o := o.(type) {
		case *widget.RichText:
			out = append(out, o.String())
		case *widget.Label:
			out = append(out, o.Text)
		}
	}
	return strings.Join(out, "\n")
}

func TestTheGuideIsShownPageByPage(t *testing.T) {
	for _, language := range words.Languages() {
		w := opened(t, withStops(0))
		w.speak(language)
		w.choose(t, "menu.help", "menu.handbook")
		h := w.handbook
		require.NotNil(t, h, language)
		pages, err := book.Pages(language)
		require.NoError(t, err)
		for i, p := range pages {
			h.list.Select(i)
			assert.Contains(t, h.read(), p.Title)
			pictures := 0
			for _, o := range h.text.Objects {
				if _, ok := o.(*canvas.Image); ok {
					pictures++
				}
			}
			assert.Equal(t, strings.Count(p.Text, "!["), pictures, "%s %s", language, p.Name)
			assert.NotContains(t, h.read(), "![")
			assert.NotContains(t, h.read(), "**")
		}
		h.win.Close()
		assert.Nil(t, w.handbook)
	}
}

func TestTheGuideIsReadByKeys(t *testing.T) {
	w := opened(t, withStops(0))
	w.showHandbook()
	h := w.handbook
	key := func(k fyne.KeyName) { h.typedKey(&fyne.KeyEvent{Name: k}) }
	key(fyne.KeyRight)
	assert.Equal(t, 1, h.shown)
	key(fyne.KeyLeft)
	key(fyne.KeyLeft)
	assert.Equal(t, 0, h.shown, "the first is the first")
	key(fyne.KeyPageDown)
	down := h.scroll.Offset.Y
	assert.Positive(t, down)
	key(fyne.KeyUp)
	assert.Less(t, h.scroll.Offset.Y, down)
	key(fyne.KeyRight)
	assert.Zero(t, h.scroll.Offset.Y, "a page begins at its beginning")
	w.showHandbook()
	assert.Same(t, h, w.handbook, "there is one")
	key(fyne.KeyEscape)
	assert.Nil(t, w.handbook)
}

func TestTheGuideSpeaksTheWindowsLanguage(t *testing.T) {
	w := opened(t, withStops(0))
	w.showHandbook()
	english := w.handbook.read()
	w.speak("de")
	w.showHandbook()
	assert.NotEqual(t, english, w.handbook.read())
	assert.Equal(t, w.words.Text("menu.handbook"), w.handbook.win.Title())
	w.handbook.win.Close()
}

func TestBlocks(t *testing.T) {
	assert.Equal(t, []block{{text: "a\nb"}, {picture: "c.png", caption: "C"}, {text: "d ![e](f) g"}, {text: "## h\n\ni"}},
		blocks("a\nb\n\n![C](c.png)\n\nd ![e](f) g\n\n## h\n\ni\n"))
	assert.Empty(t, blocks("\n\n"))
}

// Pictures are compared by the mean of small squares: letters may move by a
// pixel, but what stands where must be the same.
const (
	square    = 16   // px
	different = 16   // of 255, in the mean of a square
	mayDiffer = 0.03 // share of the squares
)

func TestThePicturesOfTheGuideShowTheWindowAsItIs(t *testing.T) {
	a := test.NewTempApp(t)
	t.Setenv("HOME", t.TempDir())
	for _, language := range words.Languages() {
		pictures, err := guidePictures(a, language)
		require.NoError(t, err)
		for _, p := range pictures {
			data, err := book.Picture(language, p.name)
			require.NoError(t, err)
			held, err := png.Decode(bytes.NewReader(data))
			require.NoError(t, err)
			if !assert.Equal(t, p.image.Bounds().Size(), held.Bounds().Size(), "%s %s", language, p.name) {
				continue
			}
			assert.LessOrEqual(t, unlike(p.image, held), mayDiffer, "%s %s shows another window: go run ./cmd/setup guide", language, p.name)
		}
	}
}

// unlike returns the share of squares in which two pictures of one size differ.
func unlike(a, b image.Image) float64 {
	all, unlike := 0, 0
	size := a.Bounds().Size()
	for y := 0; y < size.Y; y += square {
		for x := 0; x < size.X; x += square {
			all++
			if d := mean(a, x, y) - mean(b, x, y); d > different || d < -different {
				unlike++
			}
		}
	}
	return float64(unlike) / float64(all)
}

// mean returns the mean brightness of a square, of 255.
func mean(p image.Image, left, top int) float64 {
	sum, n := 0.0, 0.0
	at := p.Bounds().Min.Add(image.Pt(left, top))
	part := image.Rectangle{at, at.Add(image.Pt(square, square))}.Intersect(p.Bounds())
	for y := part.Min.Y; y < part.Max.Y; y++ {
		for x := part.Min.X; x < part.Max.X; x++ {
			r, g, b, _ := p.At(x, y).RGBA()
			sum += float64(r+g+b) / 3 / 257
			n++
		}
	}
	return sum / n
}

// The comparison itself has to be able to fail.
func TestPicturesOfDifferentPagesAreToldApart(t *testing.T) {
	pictures, err := guidePictures(test.NewTempApp(t), "en")
	require.NoError(t, err)
	require.Greater(t, len(pictures), 2)
	assert.Greater(t, unlike(pictures[1].image, pictures[2].image), mayDiffer)
	assert.Zero(t, unlike(pictures[1].image, pictures[1].image))
}
